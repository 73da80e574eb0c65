// Writes hands for looking at, in the inks of the house: hand_sheet FOLDER [DPI]
//   views.png      every view, before and after; turns.png: the golfer's eye from weak to strong
//   joins.png      both hands in every join
//   contact-N.png  sixty poses, twelve a page: turn, lay, gap, thumb, hand, glove, build and view
#include "figure/grip.hpp"
#include "output/png.hpp"
#include "text/pango_typesetter.hpp"

#include <cstdio>
#include <cstdlib>
#include <deque>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace {

using namespace hand;

constexpr std::pair<const char*, View> views[]{
    {"open palm", View::open_palm},       {"fingers first", View::fingers_first},
    {"golfer's eye", View::golfers_eye},  {"butt end", View::butt_end},
    {"balance", View::balance},           {"joined", View::joined},
    {"joined front", View::joined_front}, {"thumb short", View::thumb_short},
    {"thumb long", View::thumb_long}};

class Wall {
  public:
    Wall(const figure::Easel& easel, double cell, int columns)
        : easel_(easel)
        , cell_(cell)
        , columns_(columns) {}

    void hang(const std::string& name, const Picture& picture, unit::Hand hand) {
        const ink::Drawing d = figure::hand_drawing(easel_.theme, picture, hand, cell_ - 12);
        if (n_ % columns_ == 0) {
            top_ += row_;
            row_ = 0;
        }
        const double x = (n_ % columns_) * cell_ + 6;
        all_.add(figure::label(easel_, theme::Text::tick, name, {x, top_ + 10}));
        all_.add(d, {x, top_ + 14});
        row_ = std::max(row_, d.size.height + 22);
        all_.size = {cell_ * columns_, top_ + row_};
        ++n_;
    }
    void write(const std::string& path, double dpi) const {
        std::ofstream(path, std::ios::binary) << output::png(all_.marks, all_.size, dpi);
    }

  private:
    const figure::Easel& easel_;
    double cell_;
    int columns_, n_ = 0;
    double top_ = 0, row_ = 0;
    ink::Drawing all_;
};

Wish before() {
    Wish w;
    w.seen.lay = unit::Lay::palm;
    w.seen.knuckles = 1;
    w.seen.thumb_side = unit::ThumbSide::centre;
    w.seen.thumb_length = unit::ThumbLength::long_thumb;
    w.seen.heel_pad = unit::HeelPad::beside;
    w.seen.gap = true;
    w.seen.fingers_first = false;
    w.face_degrees = 11;
    return w;
}

Wish after() {
    Wish w;
    w.seen.lay = unit::Lay::fingers;
    w.seen.knuckles = 2;
    w.seen.gap = false;
    w.face_degrees = 2;
    return w;
}

/// The `i`th of the sixty: strides that share no factor with the counts mix everything with
/// everything.
Wish mixed(int i) {
    Wish w;
    w.build = static_cast<Build>(i % 3);
    w.seen.lay = static_cast<unit::Lay>(i / 2 % 3);
    w.seen.knuckles = (i * 5 % 9) / 2.0;
    w.seen.thumb_side = static_cast<unit::ThumbSide>(i / 4 % 3);
    w.seen.thumb_length = static_cast<unit::ThumbLength>(i / 5 % 3);
    w.seen.gap = i % 4 == 1;
    w.seen.heel_pad = static_cast<unit::HeelPad>(i / 7 % 2);
    w.seen.join = static_cast<unit::Join>(i / 9 % 3);
    w.glove = i % 5 == 2;
    w.face_degrees = (i * 7 % 25) - 12;
    return w;
}

std::string said(int i, const Wish& w, const char* view) {
    constexpr const char* build[]{"large", "small", "child"};
    constexpr const char* lay[]{"fingers", "between", "palm"};
    char text[160];
    std::snprintf(text, sizeof text, "%d %s · %s · %s · %.1f k%s%s", i, view, build[int(w.build)],
                  lay[int(*w.seen.lay)], *w.seen.knuckles, *w.seen.gap ? " · gap" : "",
                  w.glove ? " · glove" : "");
    return text;
}

void contact(const figure::Easel& easel, const std::string& folder, double dpi) {
    for (int page = 0; page < 5; ++page) {
        Wall wall(easel, 190, 6);
        for (int i = page * 12; i < page * 12 + 12; ++i) {
            // Two of three are the view on page 1.
            const auto& [name, view] = i % 3 ? views[2] : views[i / 3 % std::size(views)];
            const Wish w = mixed(i);
            wall.hang(said(i, w, name), draw(*pose(w), view),
                      i % 4 == 3 ? unit::Hand::left : unit::Hand::right);
        }
        wall.write(folder + "/contact-" + std::to_string(page + 1) + ".png", dpi);
    }
}

void joins(const figure::Easel& easel, const std::string& folder, double dpi) {
    Wall wall(easel, 200, 6);
    for (const View view : {View::joined, View::joined_front}) {
        for (const double knuckles : {2., 3.}) {
            for (const auto join :
                 {unit::Join::overlap, unit::Join::interlock, unit::Join::ten_finger}) {
                Wish w = after();
                w.seen.join = join;
                w.seen.knuckles = knuckles;
                constexpr const char* names[]{"overlap", "interlock", "ten-finger"};
                wall.hang(names[int(join)], draw(*pose(w), view), unit::Hand::right);
            }
        }
    }
    wall.write(folder + "/joins.png", dpi);
}

void pairs(const figure::Easel& easel, const std::string& folder, double dpi) {
    Wall wall(easel, 200, 6);
    for (const auto& [name, view] : views) {
        for (const Wish& w : {before(), after()})
            wall.hang(name, draw(*pose(w), view), unit::Hand::right);
    }
    wall.write(folder + "/views.png", dpi);
    Wall turns(easel, 150, 9);
    for (const unit::Lay lay : {unit::Lay::fingers, unit::Lay::palm}) {
        for (int n = 0; n <= 8; ++n) {
            Wish w = after();
            w.seen.lay = lay;
            w.seen.knuckles = n / 2.0;
            turns.hang(std::to_string(n / 2.0), draw(*pose(w), View::golfers_eye),
                       unit::Hand::right);
        }
    }
    turns.write(folder + "/turns.png", dpi);
}

/// One view of both holds and a few more.
void one(const figure::Easel& easel, const std::string& folder, double dpi, View view) {
    Wall wall(easel, 200, 4);
    wall.hang("before", draw(*pose(before()), view), unit::Hand::right);
    wall.hang("after", draw(*pose(after()), view), unit::Hand::right);
    Wish w = before();
    w.seen.lay = unit::Lay::between;
    w.seen.knuckles = 2;
    wall.hang("between, gap", draw(*pose(w), view), unit::Hand::right);
    w = after();
    w.seen.knuckles = 3;
    w.build = Build::child;
    wall.hang("child, three", draw(*pose(w), view), unit::Hand::right);
    wall.write(folder + "/one.png", dpi);
}

words::Catalogue english() {
    static std::deque<diag::Source> sources;
    words::Catalogue out("en-GB");
    diag::Findings findings;
    for (const auto& file :
         std::filesystem::directory_iterator(SOURCE_DIR "/templates/words/en-GB")) {
        std::ifstream in(file.path(), std::ios::binary);
        out.add(sources.emplace_back(file.path().filename().string(),
                                     std::string(std::istreambuf_iterator<char>(in), {})),
                findings);
    }
    return out;
}

} // namespace

int main(int count, char** arguments) {
    const std::string folder = count > 1 ? arguments[1] : ".";
    const double dpi = count > 2 ? std::atof(arguments[2]) : 110;
    const std::string what = count > 3 ? arguments[3] : "pairs joins contact";
    std::filesystem::create_directories(folder);
    const text::PangoTypesetter type;
    const theme::Theme theme = theme::house_style(theme::Paper::a4, false);
    const words::Catalogue catalogue = english();
    const words::Speaker speaker(catalogue, {unit::Hand::right, false, {}});
    const figure::Easel easel{type, theme, speaker};
    if (what.find("pairs") != std::string::npos) pairs(easel, folder, dpi);
    if (what.find("joins") != std::string::npos) joins(easel, folder, dpi);
    if (what.rfind("one ", 0) == 0)
        one(easel, folder, dpi, views[std::atoi(what.c_str() + 4)].second);
    if (what.find("contact") != std::string::npos) contact(easel, folder, dpi);
}
