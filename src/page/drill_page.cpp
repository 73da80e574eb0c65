#include "page/drill_page.hpp"

#include "figure/drill_picture.hpp"
#include "page/drill_facts.hpp"
#include "page/drill_mark.hpp"
#include "page/drill_plan.hpp"
#include "page/log_grid.hpp"
#include "page/parts.hpp"

#include <algorithm>

namespace page {

using figure::Easel;
using theme::Text;

namespace {

constexpr int path_rows = 6; ///< heights of a log row that a junior's path takes

constexpr std::size_t least_cautions = 4; ///< these stay as long as anything else can go

/// What is left out, in the order stated in the header.
struct Level {
    std::size_t cautions = 0;
    bool stages = true, repair = true, good_enough = true, picture = true, reason = true;
    bool air = true;         ///< whole gaps between the parts
    bool large_steps = true; ///< steps and plan in letters of their own size, else of the body's
};
/// Air and large letters go before any words; after each part all cautions are tried again.
std::vector<Level> levels(std::size_t cautions) {
    Level level{.cautions = cautions};
    std::vector<Level> out{level};
    const auto fewer_and_fewer = [&] {
        for (std::size_t n = cautions; n >= std::min(cautions, least_cautions); --n) {
            out.push_back(level);
            out.back().cautions = n;
        }
    };
    for (bool Level::*part : {&Level::air, &Level::large_steps, &Level::stages, &Level::repair,
                              &Level::good_enough, &Level::picture, &Level::reason}) {
        level.*part = false;
        fewer_and_fewer();
    }
    for (std::size_t n = least_cautions - 1; n >= 2; --n) { // a page may never run over
        out.push_back(level);
        out.back().cautions = n;
    }
    return out;
}

struct Part {
    ink::Drawing drawing;
    double before = 0;
};

/// One side being filled from the top.
struct Side {
    double air = 1;
    std::vector<Part> parts;
    void add(ink::Drawing drawing, double before) {
        if (drawing.size.height > 0) parts.push_back({std::move(drawing), before * air});
    }
    double height() const {
        double sum = 0;
        for (std::size_t i = 0; i < parts.size(); ++i)
            sum += parts[i].drawing.size.height + (i > 0 ? parts[i].before : 0);
        return sum;
    }
    /// One drawing; `extra` points are shared out among the gaps.
    ink::Drawing set(double width, double extra) const {
        ink::Drawing out;
        out.size.width = width;
        const double share =
            parts.size() > 1 ? std::min(10.0, extra / static_cast<double>(parts.size() - 1)) : 0;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            if (i > 0) out.size.height += parts[i].before + share;
            out.add(parts[i].drawing, {0, out.size.height});
            out.size.height += parts[i].drawing.size.height;
        }
        return out;
    }
};

class Composer {
  public:
    Composer(const Easel& easel, const Story& story, std::size_t index, const HoldPicture& hold)
        : easel_(easel)
        , story_(story)
        , index_(index)
        , hold_(hold)
        , live_(easel.theme.live(true))
        , junior_(story.lesson.student.age == record::Age::junior)
        , two_sides_(is_narrow(easel)) {}

    std::vector<ink::Drawing> sides() const {
        if (two_sides_) return {front(), back()};
        return {single()};
    }

  private:
    const ChosenDrill& chosen() const { return story_.drills[index_]; }
    const drills::Drill& drill() const { return chosen().drill; }
    double width() const { return live_.width; }
    double label_width() const {
        return easel_.theme.setting(Text::label).style.size * (two_sides_ ? 7.4 : 9.2);
    }
    Cue cue() const { return {chosen().wish.cue, drill().cue}; }
    const std::string& wished(const std::string& wish, const std::string& own) const {
        return wish.empty() ? own : wish;
    }
    std::string say(std::string_view key, const words::Holes& holes = {}) const {
        return easel_.words.say(key, holes);
    }

    ink::Drawing picture(double wide, double high) const {
        if (drill().picture.empty()) return {};
        std::optional<ink::Drawing> ready;
        if (hold_) ready = hold_(drill().picture, wide, high);
        const auto& mark = chosen().mark;
        figure::PictureNote note;
        const bool noted = mark && mark->kind == drills::Mark::gate;
        if (noted) note = {mark_label(*mark, easel_.words), mark_alternative(*mark, easel_.words)};
        ink::Drawing drawing =
            figure::drill_picture(easel_, drill().picture, story_.lesson.student.hand.value, wide,
                                  high, ready ? &*ready : nullptr, noted ? &note : nullptr);
        if (drawing.size.height <= 0) return {};
        if (!ready) return tagged(std::move(drawing), "Figure");
        return stacked(
            {tagged(std::move(drawing), "Figure"),
             tagged(figure::paragraph(easel_, Text::caption, say("drill.hand"), wide), "Caption")},
            2);
    }

    std::vector<std::string> steps() const {
        if (!junior_) {
            auto steps = drill().steps;
            const auto& mark = chosen().mark;
            if (mark && mark->kind == drills::Mark::gate)
                steps.front() = mark_step(*mark, easel_.words);
            return steps;
        }
        auto steps = drill().junior_steps.empty() ? drill().steps : drill().junior_steps;
        if (steps.size() > 3) steps.resize(3);
        return steps;
    }

    /// Steps and cue at the left, picture, need and room at the right. The cue takes the picture's
    /// place where that had to go.
    ink::Drawing how(const Level& level) const {
        const double right = width() * (junior_ ? 0.42 : 0.34), gutter = 18;
        const double left = width() - right - gutter;
        const ink::Drawing needs = drill_needs(easel_, drill(), right);
        const ink::Drawing done =
            drill_steps(easel_, steps(), left, level.large_steps ? Text::step : Text::body);
        const auto thought = [&](double wide) {
            return drill_cue(easel_, cue(), wide, level.air ? largest_cue : 20);
        };
        if (!level.picture)
            return side_by_side({{done, 0}, {stacked({needs, thought(right)}, 8), left + gutter}});
        const ink::Drawing text = stacked({done, thought(left)}, 9);
        const double room = text.size.height - needs.size.height - 8 - 15;
        const ink::Drawing shown = picture(right, std::clamp(room, 84.0, junior_ ? 170.0 : 132.0));
        return side_by_side({{text, 0}, {stacked({shown, needs}, 8), left + gutter}});
    }

    /// The coach's pass mark, else the one from the student's shots, else the drill's own.
    std::string pass() const {
        if (chosen().wish.pass.empty() && chosen().mark)
            return mark_pass(*chosen().mark, log_count(chosen()).count, easel_.words);
        return wished(chosen().wish.pass, drill().pass);
    }

    /// A junior's dose is a count and three days a week, no more.
    std::string dose() const {
        const std::string& own = wished(chosen().wish.dose, drill().dose);
        if (!junior_)
            return own + (own.empty() ? "" : " · ") +
                   say("drill.minutes", {{"n", drill().minutes}});
        const LogCount count = log_count(chosen());
        if (drill().family == "speed") return say("junior.dose.lesson");
        if (count.open || count.count.tries <= 1) return own;
        return say("junior.dose", {{"n", count.count.tries}});
    }

    enum class Facts { all, doing, judging };
    ink::Drawing facts(const Level& level, Facts which = Facts::all) const {
        const double w = width(), label = label_width();
        std::vector<ink::Drawing> rows;
        const auto fact = [&](const char* key, const std::string& words) {
            if (!words.empty()) rows.push_back(drill_fact(easel_, say(key), words, w, label));
        };
        const bool doing = which != Facts::judging, judging = which != Facts::doing;
        if (doing) fact("drill.dose", dose());
        if (doing && !drill().check.empty())
            rows.push_back(drill_check(easel_, say("drill.check"), drill().check, w, label));
        if (judging && !junior_) {
            if (level.good_enough) fact("drill.good-enough", drill().good_enough);
            fact("drill.pass", pass());
        }
        if (judging && level.repair) fact("drill.repair", drill().repair);
        auto lines = drill_cautions(easel_, drill(), junior_);
        if (lines.size() > level.cautions) lines.resize(level.cautions);
        if (doing) rows.push_back(drill_caution_lines(easel_, lines, w, label));
        return stacked(rows, 1.5);
    }

    ink::Drawing plan(const Level& level) const {
        const double label = label_width();
        const Text text = level.large_steps ? Text::lead : Text::body;
        ink::Drawing body =
            drill_plan(easel_, story_.lesson.plan, drill_sign_text(easel_, chosen(), index_),
                       width() - label, text);
        ink::Drawing name = figure::paragraph(easel_, Text::label, say("plan.title"), label - 6);
        ink::Drawing out;
        out.size = {width(), body.size.height};
        const auto first = [](const ink::Drawing& d) {
            for (const auto& mark : d.marks)
                if (const auto* words = std::get_if<ink::Words>(&mark)) return words->at.y;
            return 0.0;
        };
        const double down = std::max(0.0, first(body) - first(name));
        out.add(tagged(std::move(name), "H2"), {0, down});
        out.add(body, {label, 0});
        return out;
    }

    /// What the rows mean; without the stage texts the stages' names at least.
    ink::Drawing log_note(bool with_stages) const {
        std::string note = say("drillpage.strange");
        if (with_stages)
            note += " " + say("drill.missed");
        else
            note = say("drill.stage.a") + " · " + say("drill.stage.b") + " · " +
                   say("drill.stage.c") + ". " + note;
        return tagged(figure::paragraph(easel_, Text::small, note, width()), "P");
    }

    void fill_log(Side& side, const Level& level, double row) const {
        if (junior_) {
            side.add(stacked({tagged(figure::paragraph(easel_, Text::heading,
                                                       say("log.title-junior"), width()),
                                     "H2"),
                              tagged(figure::paragraph(easel_, Text::body, say("log.path.note"),
                                                       width()),
                                     "P")},
                             0),
                     10);
            side.add(tagged(log_path(easel_, width(), row * path_rows), "Figure"), 4);
            return;
        }
        if (level.stages) side.add(log_stages(easel_, chosen(), width()), 7);
        const LogCount count = log_count(chosen());
        const int half = log_days / 2;
        if (two_sides_) {
            side.add(log_grid(easel_, count, 1, half, width(), row), 8);
            side.add(log_grid(easel_, count, half + 1, log_days, width(), row), 6);
        } else {
            side.add(log_grid(easel_, count, 1, log_days, width(), row), 6);
        }
        side.add(log_note(level.stages), 2);
    }

    /// The first level at which `build` fits; rows grow into what is left, then the gaps do. Where
    /// none fits, as a log of six rows on A5, each row gives up to a millimetre of its height.
    template <class Build>
    ink::Drawing fitted(Build build) const {
        const double floor = least_log_cell + 0.05;
        const int rows =
            (junior_ ? path_rows : log_rows(log_count(chosen()))) * (two_sides_ ? 2 : 1);
        const auto all = levels(drill_cautions(easel_, drill(), junior_).size());
        Side side;
        for (const Level& level : all) {
            side = build(level, floor);
            const double spare = live_.height - side.height();
            if (spare < 0 && &level == &all.back())
                side = build(level, floor - std::min(1.0 * figure::mm, 0.05 - spare / rows));
            if (spare < 0) continue;
            const double grow = std::min(spare * 0.6 / rows, junior_ ? 16.0 : 2.0 * figure::mm);
            side = build(level, floor + grow);
            break;
        }
        return side.set(width(), std::max(0.0, live_.height - side.height()));
    }

    ink::Drawing single() const {
        return fitted([&](const Level& level, double row) {
            Side side{level.air ? 1 : 0.4, {}};
            side.add(drill_head(easel_, story_, index_, level.reason, width()), 0);
            side.add(how(level), 7);
            side.add(facts(level), 7);
            side.add(plan(level), 5);
            fill_log(side, level, row);
            side.add(log_cold(easel_, story_, chosen(), width()), 7);
            return side;
        });
    }

    ink::Drawing front() const {
        return fitted([&](const Level& level, double) {
            Side side{level.air ? 1 : 0.4, {}};
            side.add(drill_head(easel_, story_, index_, level.reason, width()), 0);
            const double gutter = 18, half = (width() - gutter) / 2;
            ink::Drawing shown = level.picture ? picture(half, 112) : ink::Drawing{};
            const bool pair = shown.size.height > 0;
            ink::Drawing needs = drill_needs(easel_, drill(), pair ? half : width());
            side.add(pair ? side_by_side({{needs, 0}, {shown, half + gutter}}) : needs, 10);
            side.add(
                drill_steps(easel_, steps(), width(), level.large_steps ? Text::step : Text::body),
                10);
            side.add(drill_cue(easel_, cue(), width()), 12);
            side.add(facts(level, Facts::doing), 12);
            return side;
        });
    }

    ink::Drawing back() const {
        return fitted([&](const Level& level, double row) {
            Side side{level.air ? 1 : 0.4, {}};
            side.add(facts(level, Facts::judging), 0);
            side.add(plan(level), 8);
            fill_log(side, level, row);
            side.add(log_cold(easel_, story_, chosen(), width()), 7);
            return side;
        });
    }

    const Easel& easel_;
    const Story& story_;
    std::size_t index_;
    const HoldPicture& hold_;
    ink::Rect live_;
    bool junior_, two_sides_;
};

} // namespace

Section drill_page(const Easel& easel, const Story& story, std::size_t index,
                   const HoldPicture& hold) {
    const std::string& name = story.drills.at(index).drill.name;
    Section section;
    section.name = "drill-" + std::to_string(index + 1);
    section.right_hand = true;
    section.title =
        story.drills.size() > 1
            ? easel.words.say("drill.title",
                              {{"n", index + 1}, {"of", story.drills.size()}, {"name", name}})
            : easel.words.say("drill.title-one", {{"name", name}});
    for (auto& side : Composer(easel, story, index, hold).sides()) {
        Block block;
        block.name = section.name;
        block.pieces.push_back({std::move(side)});
        section.blocks.push_back(std::move(block));
    }
    return section;
}

} // namespace page
