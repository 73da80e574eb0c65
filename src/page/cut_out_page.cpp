#include "page/cut_out_page.hpp"

#include "page/furniture.hpp"
#include "page/parts.hpp"
#include "words/date.hpp"

#include <algorithm>

namespace page {

using figure::Easel;
using figure::mm;
using theme::Text;

namespace {

constexpr double spine_width = 30 * mm, flap = 8 * mm, longest_spine = 190 * mm;
constexpr double label_width = spine_width + 2 * flap;

void cut_line(ink::Drawing& d, const ink::Rect& box, const Easel& easel) {
    d.add(ink::Stroke{
        ink::Path::rect(box), easel.theme.widths.rule, easel.theme.text, {4, 3}, ink::Cap::butt});
}

/// A side of the card in its broken line.
ink::Drawing outlined(const Easel& easel, ink::Drawing side) {
    side.message = easel.words.say("card.message");
    ink::Drawing out;
    out.size = figure::card_size;
    cut_line(out, {0, 0, out.size.width, out.size.height}, easel);
    out.add(tagged(std::move(side), "Figure"), {});
    return out;
}

/// Words that run up the spine.
ink::Words upward(const Easel& easel, const ink::Style& style, const std::string& words,
                  ink::Point at) {
    ink::Words line = figure::label(easel, style, words, at);
    line.turn = 90;
    return line;
}

/// The label between its two flaps.
ink::Drawing spine(const Easel& easel, const Course& course, double spine_length) {
    ink::Drawing out;
    out.size = {label_width, spine_length};
    cut_line(out, {0, 0, out.size.width, spine_length}, easel);
    for (const double x : {flap, flap + spine_width})
        out.add(ink::Stroke{ink::Path::segment({x, 0}, {x, spine_length}),
                            0.5,
                            easel.theme.rule,
                            {1, 3},
                            ink::Cap::butt});
    ink::Style large = easel.theme.setting(Text::title).style;
    const double room = spine_length - 24 * mm;
    const std::string name = easel.words.say("binder.title");
    large.size = std::max(large.size, 34.0);
    for (; large.size > 12 && easel.type.line(name, large).width > room; large.size -= 1) {
    }
    ink::Style plain = easel.theme.setting(Text::lead).style;
    plain.size = std::min(plain.size, 14.0); // a spine is as wide in large print
    const auto first = course.lessons.front().story->lesson.date.value.year();
    const auto last = course.latest().date.value.year();
    std::string years = std::to_string(static_cast<int>(first));
    if (last != first)
        years = easel.words.say(
            "binder.range", {{"first", years}, {"last", std::to_string(static_cast<int>(last))}});
    const std::string under = easel.words.say(
        "binder.spine", {{"name", whose(easel, course.latest().student)}, {"year", years}});
    const double middle = flap + spine_width / 2;
    out.add(upward(easel, large, name, {middle + 2, spine_length - 12 * mm}));
    out.add(upward(easel, plain, under, {middle + plain.size * 1.5, spine_length - 12 * mm}));
    return out;
}

Section leaf(const Easel& easel, std::string name, ink::Drawing drawing) {
    Section section{.name = std::move(name)};
    Block block{.name = "to cut out"};
    block.pieces.push_back({std::move(drawing)});
    section.blocks.push_back(page_title(easel, easel.words.say("binder.cut-out")));
    section.blocks.push_back(std::move(block));
    return section;
}

} // namespace

namespace {

ink::Drawing how_to(const Easel& easel, double width) {
    const auto part = [&](const char* key) {
        return tagged(figure::paragraph(easel, Text::body, easel.words.say(key), width), "P");
    };
    return stacked({part("binder.card.cut"), part("binder.spine.fold")}, 6);
}

/// Card and label beside each other, as on A4 and Letter.
ink::Drawing card_and_label(const Easel& easel, ink::Drawing card, const ink::Drawing& label) {
    const double width = column_width(easel);
    ink::Drawing out;
    out.size = {width, std::max(figure::card_size.height, label.size.height)};
    out.add(std::move(card), {0, 0});
    out.add(label, {width - label.size.width, 0});
    out.add(how_to(easel, width - label.size.width - 18), {0, figure::card_size.height + 14});
    return out;
}

/// A leaf for the label, where it has no room beside the card.
Section label_leaf(const Easel& easel, const Course& course) {
    const double width = column_width(easel);
    const double room =
        easel.theme.live(true).height - 4 * easel.theme.setting(Text::title).leading;
    ink::Drawing out = spine(easel, course, std::min(longest_spine, room));
    const double beside = out.size.width + 18;
    out.add(tagged(figure::paragraph(easel, Text::body, easel.words.say("binder.spine.fold"),
                                     width - beside),
                   "P"),
            {beside, 0});
    out.size.width = width;
    return leaf(easel, "spine", std::move(out));
}

} // namespace

std::vector<Section> cut_out_pages(const Easel& easel, const Course& course,
                                   const figure::GripCardInput& card) {
    const double width = column_width(easel);
    const bool beside = figure::card_size.width + label_width <= width;
    figure::GripCardSides sides = figure::grip_card_sides(easel, card);
    ink::Drawing front = outlined(easel, std::move(sides.front));
    if (beside)
        front = card_and_label(easel, std::move(front), spine(easel, course, longest_spine));
    ink::Drawing back;
    back.size = {width, front.size.height};
    back.add(outlined(easel, std::move(sides.back)), {width - figure::card_size.width, 0});
    std::vector<Section> out{leaf(easel, "card", std::move(front)),
                             leaf(easel, "card-back", std::move(back))};
    out[0].right_hand = true;
    out[0].title = easel.words.say("binder.cut-out");
    if (!beside) {
        out.push_back(label_leaf(easel, course));
        out.back().right_hand = true;
    }
    return out;
}

} // namespace page
