#include "figure/drill_picture.hpp"

#include "figure/drill_picture_scenes.hpp"

#include <algorithm>
#include <array>

namespace figure {

namespace {

struct Row {
    std::string_view name;
    std::string_view alternative; ///< words key of the message
    void (*draw)(Sketch&);
};

constexpr std::array rows{
    Row{"open palm", "drillpic.alt.open-palm", scene::open_palm},
    Row{"balance", "drillpic.alt.balance", scene::balance},
    Row{"golfers eye", "drillpic.alt.golfers-eye", scene::golfers_eye},
    Row{"butt end", "drillpic.alt.butt-end", scene::butt_end},
    Row{"kettle", "drillpic.alt.kettle", scene::kettle},
    Row{"joined", "drillpic.alt.joined", scene::joined},
    Row{"light to firm", "drillpic.alt.light-to-firm", scene::light_to_firm},
    Row{"glove", "drillpic.alt.glove", scene::glove},
    Row{"edge line", "drillpic.alt.edge-line", scene::edge_line},
    Row{"waist high", "drillpic.alt.waist-high", scene::waist_high},
    Row{"cushion", "drillpic.alt.cushion", scene::cushion},
    Row{"gate", "drillpic.alt.gate", scene::gate},
    Row{"ruler", "drillpic.alt.ruler", scene::ruler},
    Row{"call it", "drillpic.alt.call-it", scene::call_it},
    Row{"corridor", "drillpic.alt.corridor", scene::corridor},
    Row{"soft box", "drillpic.alt.soft-box", scene::soft_box},
    Row{"drawn-back foot", "drillpic.alt.drawn-back-foot", scene::drawn_back_foot},
    Row{"two lines", "drillpic.alt.two-lines", scene::two_lines},
    Row{"handle first", "drillpic.alt.handle-first", scene::handle_first},
    Row{"punch", "drillpic.alt.punch", scene::punch},
    Row{"landings", "drillpic.alt.landings", scene::landings},
    Row{"brush line", "drillpic.alt.brush-line", scene::brush_line},
    Row{"towel", "drillpic.alt.towel", scene::towel},
    Row{"tee", "drillpic.alt.tee", scene::tee},
    Row{"face dots", "drillpic.alt.face-dots", scene::face_dots},
    Row{"feet together", "drillpic.alt.feet-together", scene::feet_together},
    Row{"swish", "drillpic.alt.swish", scene::swish},
    Row{"gears", "drillpic.alt.gears", scene::gears},
    Row{"rails", "drillpic.alt.rails", scene::rails},
    Row{"ten", "drillpic.alt.ten", scene::ten},
};

const Row* find(std::string_view name) {
    const auto at =
        std::find_if(rows.begin(), rows.end(), [&](const Row& row) { return row.name == name; });
    return at == rows.end() ? nullptr : &*at;
}

} // namespace

std::vector<std::string_view> drill_pictures() {
    std::vector<std::string_view> names;
    for (const Row& row : rows)
        names.push_back(row.name);
    return names;
}

bool has_drill_picture(std::string_view name) { return find(name) != nullptr; }

ink::Drawing drill_picture(const Easel& easel, std::string_view name, unit::Hand hand, double width,
                           double height, const ink::Drawing* ready, const PictureNote* note) {
    if (ready && ready->size.width <= width && ready->size.height <= height) {
        ink::Drawing out;
        out.size = {width, height};
        out.message = ready->message;
        out.add(*ready, {(width - ready->size.width) / 2, (height - ready->size.height) / 2});
        return out;
    }
    const Row* row = find(name);
    if (!row) return {};
    Sketch sketch(easel, hand, {width, height});
    if (note) sketch.note = note->label;
    row->draw(sketch);
    return sketch.done(note ? note->message : easel.words.say(row->alternative));
}

} // namespace figure
