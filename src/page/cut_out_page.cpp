#include "page/cut_out_page.hpp"

#include "figure/grip.hpp"
#include "page/furniture.hpp"
#include "page/hold_words.hpp"
#include "page/parts.hpp"
#include "words/date.hpp"

#include <algorithm>

namespace page {

using figure::Easel;
using figure::mm;
using theme::Text;

namespace {

constexpr ink::Size card{105 * mm, 148 * mm}; // A6, ISO 216
constexpr double spine_width = 30 * mm, flap = 8 * mm, spine_length = 190 * mm;
constexpr double pad = 5 * mm;
constexpr double handle_diameter = 24; // millimetres, of the drawn hand's handle at its end

void cut_line(ink::Drawing& d, const ink::Rect& box, const Easel& easel) {
    d.add(ink::Stroke{
        ink::Path::rect(box), easel.theme.widths.rule, easel.theme.text, {4, 3}, ink::Cap::butt});
}

/// The lesson whose hold the card shows: the newest that recorded one, else the newest.
const Story& story_of(const Course& course) {
    for (auto i = course.lessons.rbegin(); i != course.lessons.rend(); ++i)
        if (!i->story->views.empty()) return *i->story;
    return *course.lessons.back().story;
}

std::optional<hand::Picture> picture_of(const Story& story, hand::View view) {
    for (const GripView& v : story.views)
        if (v.view == view) return v.after ? v.after : v.before;
    return std::nullopt;
}

ink::Drawing shown(const Easel& easel, const hand::Picture& picture, hand::View view,
                   double width) {
    ink::Drawing out = figure::hand_drawing(easel.theme, picture, easel.words.voice().hand, width);
    out.message = easel.words.say(view_key(view));
    return tagged(std::move(out), "Figure");
}

/// Six looks, each with a box.
ink::Drawing looks_list(const Easel& easel, const record::Lesson& lesson, double width) {
    const auto& setting = easel.theme.setting(Text::body);
    std::vector<ink::Drawing> rows;
    for (int i = 1; i <= 6; ++i) {
        const words::Holes holes{{"n", wanted_knuckles(lesson)}};
        const std::string line =
            easel.words.say("check." + std::to_string(i), i == 5 ? holes : words::Holes{});
        ink::Drawing words = figure::paragraph(easel, Text::body, line, width - 18);
        ink::Drawing row;
        row.size = {width, words.size.height};
        row.add(figure::label(easel, figure::bold(easel, Text::body), std::to_string(i),
                              {0, setting.leading * 0.78}));
        row.add(tagged(std::move(words), "P"), {18, 0});
        rows.push_back(std::move(row));
    }
    return stacked(rows, 3);
}

ink::Drawing card_front(const Easel& easel, const Story& story) {
    const double width = card.width - 2 * pad;
    const auto& w = easel.words;
    theme::Setting name = easel.theme.setting(Text::heading);
    name.style.weight = 900;
    std::vector<ink::Drawing> parts{
        tagged(figure::paragraph(easel, name, w.say("binder.card"), width), "H2"),
        figure::paragraph(easel, Text::caption,
                          whose(easel, story.lesson.student) + " · " +
                              words::date_long(story.lesson.date.value, w),
                          width),
        looks_list(easel, story.lesson, width)};
    ink::Drawing text = stacked(parts, 5);
    ink::Drawing out;
    out.size = card;
    cut_line(out, {0, 0, card.width, card.height}, easel);
    out.add(text, {pad, pad});
    const double rest = card.height - 2 * pad - text.size.height - 8;
    const auto picture = picture_of(story, hand::View::golfers_eye);
    if (picture && rest > 60) {
        const double wide = std::min(width * 0.6, rest * picture->width / picture->height);
        out.add(
            shown(easel, *picture, hand::View::golfers_eye, wide),
            {(card.width - wide) / 2, card.height - pad - wide * picture->height / picture->width});
    }
    return out;
}

/// Fifty millimetres with a tick each ten.
ink::Drawing ruler(const Easel& easel, double width) {
    const auto& tick = easel.theme.setting(Text::tick);
    ink::Drawing out;
    const double left = (width - 50 * mm) / 2, y = 8;
    ink::Path path = ink::Path::segment({left, y}, {left + 50 * mm, y});
    for (int i = 0; i <= 50; i += 5) {
        const double x = left + i * mm, high = i % 10 == 0 ? 7 : 4;
        path.move({x, y}).line({x, y - high});
    }
    out.add(ink::Stroke{path, 0.6, easel.theme.text, {}, ink::Cap::butt});
    for (const int i : {0, 50})
        out.add(figure::label(easel, Text::tick, std::to_string(i),
                              {left + i * mm, y + tick.leading}, text::Align::centre));
    ink::Drawing words = figure::paragraph(
        easel, Text::caption, easel.words.say("binder.card.ruler"), width, text::Align::centre);
    const double top = y + tick.leading + 4;
    out.add(words, {0, top});
    out.size = {width, top + words.size.height};
    return out;
}

/// The handle's end at true size, to lay the club on.
ink::Drawing handle_end(const Easel& easel, double width) {
    const double radius = handle_diameter / 2 * mm;
    const ink::Point centre{width / 2, radius + 2};
    ink::Drawing d;
    d.add(ink::Stroke{ink::Path::circle(centre, radius), 1.2, easel.theme.text});
    d.add(ink::Stroke{ink::Path::circle(centre, 1.5), 0.8, easel.theme.text});
    d.message = easel.words.say("binder.card.handle");
    d.size = {width, 2 * radius + 4};
    const ink::Drawing words =
        figure::paragraph(easel, Text::caption, d.message, width, text::Align::centre);
    return stacked({tagged(std::move(d), "Figure"), words}, 4);
}

ink::Drawing card_back(const Easel& easel, const Story& story) {
    const double width = card.width - 2 * pad;
    const auto& w = easel.words;
    std::vector<ink::Drawing> parts;
    if (!story.lesson.targets.empty()) {
        parts.push_back(
            tagged(figure::paragraph(easel, Text::heading, w.say("coach.targets"), width), "H2"));
        for (const auto& target : story.lesson.targets)
            parts.push_back(tagged(figure::paragraph(easel, Text::coach, target, width), "P"));
    }
    ink::Drawing text = stacked(parts, 3), rule_of = ruler(easel, width);
    ink::Drawing out;
    out.size = card;
    cut_line(out, {0, 0, card.width, card.height}, easel);
    out.add(text, {pad, pad});
    out.add(rule_of, {pad, card.height - pad - rule_of.size.height});
    const double top = pad + text.size.height + 8;
    const double room = card.height - pad - rule_of.size.height - 10 - top;
    const ink::Drawing end = handle_end(easel, width);
    if (end.size.height <= room) out.add(end, {pad, top + (room - end.size.height) / 2});
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
ink::Drawing spine(const Easel& easel, const Course& course) {
    ink::Drawing out;
    out.size = {spine_width + 2 * flap, spine_length};
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

std::vector<Section> cut_out_pages(const Easel& easel, const Course& course) {
    const auto& w = easel.words;
    const Story& story = story_of(course);
    const double width = column_width(easel);
    const ink::Drawing label = spine(easel, course);
    ink::Drawing front;
    front.size = {width, std::max(card.height, spine_length)};
    front.add(card_front(easel, story), {0, 0});
    front.add(label, {width - label.size.width, 0});
    const double below = card.height + 14, words_width = width - label.size.width - 18;
    front.add(
        stacked(
            {tagged(figure::paragraph(easel, Text::body, w.say("binder.card.cut"), words_width),
                    "P"),
             tagged(figure::paragraph(easel, Text::body, w.say("binder.spine.fold"), words_width),
                    "P")},
            6),
        {0, below});
    ink::Drawing back;
    back.size = front.size;
    back.add(card_back(easel, story), {width - card.width, 0});
    std::vector<Section> out{leaf(easel, "card", std::move(front)),
                             leaf(easel, "card-back", std::move(back))};
    out[0].right_hand = true;
    out[0].title = w.say("binder.cut-out");
    return out;
}

} // namespace page
