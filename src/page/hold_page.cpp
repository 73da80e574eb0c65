#include "page/hold_page.hpp"

#include "figure/grip.hpp"
#include "page/hold_words.hpp"
#include "page/log_notes.hpp"
#include "page/parts.hpp"

#include <algorithm>
#include <array>

namespace page {

namespace {

/// What a row of pictures shows: aspects with their numbers, and call-outs to match.
struct Numbered {
    std::vector<figure::CallOut> call_outs;
    std::vector<std::string> lines;
};

/// What any trail hand does, said beside the picture of both hands.
void add_trail_basics(Numbered& out, const words::Speaker& words, const record::Lesson& lesson,
                      hand::View view) {
    const auto join = lesson.after.join    ? lesson.after.join
                      : lesson.before.join ? lesson.before.join
                                           : lesson.target.join;
    if (join && !out.lines.empty()) {
        constexpr std::array keys{"overlap", "interlock", "ten-finger"};
        out.lines.back() +=
            " " +
            words.say("grip.join." + std::string(keys[static_cast<std::size_t>(*join)]) + ".plain");
    }
    if (view == hand::View::joined_front) return; // there the palm hides the thumb
    out.call_outs.push_back({static_cast<int>(out.call_outs.size()) + 1, "lead thumb"});
    out.lines.push_back(words.say("call.cover"));
}

/// Beside a hold to aim at: the looks that its picture answers.
Numbered looked_for(const figure::Easel& easel, const Story& story, hand::View view) {
    struct Look {
        hand::View view;
        const char* anchor;
        std::size_t line;
    };
    constexpr std::array<Look, 4> looks{{{hand::View::open_palm, "handle line", 0},
                                         {hand::View::open_palm, "finger", 1},
                                         {hand::View::golfers_eye, "knuckle 1", 4},
                                         {hand::View::butt_end, "heel pad", 3}}};
    const auto lines = look_lines(story.lesson, easel.words);
    Numbered out;
    for (const Look& look : looks)
        if (look.view == view || (looks_down(look.view) && looks_down(view))) {
            out.call_outs.push_back({static_cast<int>(out.call_outs.size()) + 1, look.anchor});
            out.lines.push_back(lines[look.line]);
        }
    return out;
}

Numbered numbered(const figure::Easel& easel, const Story& story, hand::View view) {
    if (!story.wanted.empty()) return looked_for(easel, story, view);
    Numbered out;
    const auto seen = aspects(story, easel.words);
    for (const Shown& shown : shown_in(view)) {
        const auto found = std::ranges::find(seen, std::string(shown.pair_key), &Aspect::pair_key);
        if (found == seen.end()) continue;
        const int number = static_cast<int>(out.call_outs.size()) + 1;
        out.call_outs.push_back({number, shown.anchor});
        out.lines.push_back(sentence(*found, easel.words));
    }
    if (view == hand::View::joined || view == hand::View::joined_front)
        add_trail_basics(out, easel.words, story.lesson, view);
    return out;
}

/// Numbered lines with hanging numbers in the manner of the badges.
ink::Drawing explained(const figure::Easel& easel, const std::vector<std::string>& lines,
                       double width) {
    std::vector<ink::Drawing> parts;
    const auto& setting = easel.theme.setting(theme::Text::body);
    const auto style = figure::bold(easel, theme::Text::tick);
    for (std::size_t i = 0; i < lines.size(); ++i) {
        ink::Drawing text = figure::paragraph(easel, theme::Text::body, lines[i], width - 18);
        ink::Drawing d;
        d.size = {width, text.size.height};
        d.add(text, {18, 0});
        const ink::Point at{6, setting.leading * 0.56};
        d.add(ink::Stroke{ink::Path::circle(at, 6), 0.8, easel.theme.text, {}, ink::Cap::butt});
        d.add(figure::label(easel, style, std::to_string(i + 1),
                            {at.x, at.y + figure::middle(style)}, text::Align::centre));
        parts.push_back(std::move(d));
    }
    return stacked(parts, 5);
}

std::string alternative(const figure::Easel& easel, const Story& story, const Numbered& n,
                        hand::View view) {
    (void)story;
    std::string facts;
    for (const auto& line : n.lines)
        facts += (facts.empty() ? "" : " ") + line;
    return easel.words.say(view_key(view)) + ". " + facts;
}

/// The strip from weak to strong under its name.
ink::Drawing strength(const figure::Easel& easel, const Story& story, double width) {
    ink::Drawing strip = figure::strength_strip(easel, *story.strength, width);
    std::string message = strip.message;
    ink::Drawing all = stacked(
        {figure::paragraph(easel, theme::Text::label, easel.words.say("grip.view.strip"), width),
         std::move(strip)},
        4);
    all.message = std::move(message);
    return all;
}

/// One view: before, after, and what to look at; with the strip beside the golfer's eye.
Block view_row(const figure::Easel& easel, const Story& story, const GripView& view,
               double hand_width, bool with_strip) {
    const double gutter = easel.theme.gutter * figure::mm;
    const auto hand = story.lesson.student.hand.value;
    const Numbered n = numbered(easel, story, view.view);
    std::vector<Cell> cells;
    double x = 0;
    const auto add = [&](const std::optional<hand::Picture>& picture, const char* key) {
        if (!picture) return;
        cells.push_back({figure::called_out(easel, *picture, hand, easel.words.say(key),
                                            n.call_outs, hand_width),
                         x});
        x += hand_width + gutter / 2;
    };
    add(view.before, view.first_key);
    const bool wanted = !story.wanted.empty();
    add(view.after, view.before || wanted ? view.second_key : "grip.now");
    x += gutter / 2;
    const double beside = column_width(easel) - x;
    ink::Drawing words = stacked(
        {figure::paragraph(easel, theme::Text::label, easel.words.say(view_key(view.view)), beside),
         explained(easel, n.lines, beside)},
        6);
    with_strip = with_strip && story.strength && looks_down(view.view);
    if (with_strip)
        words = stacked({std::move(words), strength(easel, story, std::min(beside, 240.0))}, 10);
    double height = 0;
    for (const Cell& c : cells)
        height = std::max(height, c.drawing.size.height);
    const double top = std::max(0.0, (height - words.size.height) * 0.4);
    cells.push_back({stacked({gap(beside, std::max(top, 0.01)), words}, 0), x});
    ink::Drawing all = side_by_side(cells);
    all.message = alternative(easel, story, n, view.view);
    if (with_strip) all.message += " " + easel.words.say("strip.message");
    return figure_block(view_key(view.view), std::move(all), 8);
}

ink::Drawing answer(const figure::Easel& easel, const std::optional<bool>& look, double width,
                    bool dash) {
    const auto& setting = easel.theme.setting(theme::Text::table);
    ink::Drawing d;
    d.size = {width, setting.leading};
    const double base = setting.leading * 0.76;
    if (!look) {
        d.add(figure::label(easel, theme::Text::small,
                            dash ? "–" : easel.words.say("check.not-looked"), {0, base}));
        return d;
    }
    auto style = setting.style;
    style.weight = *look ? 700 : 400;
    d.add(
        figure::label(easel, style, easel.words.say(*look ? "check.yes" : "check.no"), {14, base}));
    if (*look)
        d.add(ink::Stroke{ink::Path::polyline({{1, base - 3.4}, {4, base - 0.6}, {10, base - 7.6}}),
                          1.5, easel.theme.text});
    else
        d.add(ink::Stroke{
            ink::Path::circle({5.2, base - 3.6}, 3.1), 0.9, easel.theme.text, {}, ink::Cap::butt});
    return d;
}

/// A look with its number hanging before it.
ink::Drawing numbered(const figure::Easel& easel, std::size_t number, std::string_view words,
                      double width) {
    const auto& setting = easel.theme.setting(theme::Text::body);
    const double hang = setting.style.size * 1.25;
    const auto set = easel.type.set(words, setting.style, width - hang, setting.leading);
    ink::Drawing out;
    out.size = {width, set.height};
    out.add(figure::label(easel, setting.style, std::to_string(number),
                          {hang * 0.5, set.lines.empty() ? 0 : set.lines.front().at.y},
                          text::Align::right));
    for (const auto& line : set.lines)
        out.add(ink::moved(line, {hang, 0}));
    return out;
}

} // namespace

Block checklist(const figure::Easel& easel, const Story& story) {
    const auto& w = easel.words;
    const auto room = [&](theme::Text text, const char* key) {
        return easel.type.line(w.say(key), easel.theme.setting(text).style).width + 8;
    };
    const double width = column_width(easel),
                 box = std::max(44.0, room(theme::Text::table_head, "check.cold")),
                 least = std::max({44.0, room(theme::Text::table_head, "check.before"),
                                   room(theme::Text::table_head, "check.after")}),
                 most = std::max({66.0, room(theme::Text::small, "check.not-looked"), least});
    const bool looked = story.lesson.has_before || story.lesson.has_after;
    // on narrow paper "not looked at" becomes a dash, so that the looks keep half of it
    const bool dash = looked && width - 2 * most - box < width / 2;
    const double cell = dash ? least : most;
    const double words_width = width - (looked ? 2 * cell : 0) - box;
    const Looks before = looks(story.lesson.before, story.lesson.target);
    const Looks after = looks(story.lesson.after, story.lesson.target);
    Block block{.name = "checklist", .role = "Table"};
    block.space_before = 10;

    ink::Drawing head;
    head.size = {width, easel.theme.setting(theme::Text::table_head).leading + 6};
    const double base = head.size.height - 6;
    head.add(ink::Tag{true, "TR", {}});
    const auto th = [&](const std::string& text, double x) {
        head.add(ink::Tag{true, "TH", {}});
        head.add(figure::label(easel, theme::Text::table_head, text, {x, base}));
        head.add(ink::Tag{false, "TH", {}});
    };
    th(w.say("check.title"), 0);
    if (looked) th(w.say("check.before"), words_width);
    if (looked) th(w.say("check.after"), words_width + cell);
    th(w.say("check.cold"), width - box);
    head.add(ink::Tag{false, "TR", {}});
    head.add(rule(easel, width, 0.8), {0, head.size.height - 1});
    block.head = std::move(head);

    const auto looked_for = look_lines(story.lesson, w);
    for (std::size_t i = 0; i < before.size(); ++i) {
        ink::Drawing text = numbered(easel, i + 1, looked_for[i], words_width - 6);
        ink::Drawing row;
        row.size = {width, text.size.height + 5};
        row.add(ink::Tag{true, "TR", {}});
        row.add(tagged(std::move(text), "TD"), {0, 2});
        if (looked) {
            row.add(tagged(answer(easel, before[i], cell, dash), "TD"), {words_width, 2});
            row.add(tagged(answer(easel, after[i], cell, dash), "TD"), {words_width + cell, 2});
        }
        row.add(ink::Tag{true, "TD", {}});
        row.add(ink::Stroke{ink::Path::rect({width - box + 4, 3.5, 11, 11}),
                            0.8,
                            easel.theme.text,
                            {},
                            ink::Cap::butt});
        row.add(ink::Tag{false, "TD", {}});
        row.add(ink::Tag{false, "TR", {}});
        row.add(ink::Stroke{
            ink::Path::segment({0, row.size.height - 0.3}, {width, row.size.height - 0.3}),
            0.35,
            easel.theme.rule,
            {},
            ink::Cap::butt});
        block.pieces.push_back({std::move(row), i + 1 < before.size()});
    }
    return block;
}

namespace {

std::vector<Block> hold_blocks(const figure::Easel& easel, const Story& story, double hand_width,
                               bool with_strip) {
    std::vector<Block> blocks;
    blocks.push_back(page_title(easel, easel.words.say("page.hold.question")));
    for (const auto* views : {&story.views, &story.wanted})
        for (const GripView& view : *views)
            blocks.push_back(view_row(easel, story, view, hand_width, with_strip));
    if (!story.lesson.targets.empty()) {
        blocks.push_back(heading(easel, easel.words.say("coach.targets"), 8));
        for (const auto& target : story.lesson.targets)
            blocks.push_back(text_block(easel, theme::Text::coach, target, 1));
    }
    blocks.push_back(checklist(easel, story));
    std::string caption =
        easel.words.say("grip.caption.lead") + " " +
        easel.words.say(story.wanted.empty() ? "grip.caption.drawn" : "grip.caption.wanted");
    const auto shown = [&](auto&& fits) {
        return std::ranges::any_of(story.views, fits, &GripView::view) ||
               std::ranges::any_of(story.wanted, fits, &GripView::view);
    };
    if (shown([](hand::View v) { return v == hand::View::golfers_eye; }))
        caption += " " + easel.words.say("grip.caption.wedge");
    if (shown(looks_down)) caption += marks_legend(story, easel.words);
    blocks.push_back(text_block(easel, theme::Text::small, caption, 4));
    return blocks;
}

constexpr double smallest_hand = 80; ///< points: two sides rather than hands nobody can read

/// How high all rows of pictures are together, as a part of one picture's width.
double heights_to_widths(const Story& story) {
    double sum = 0;
    for (const auto* views : {&story.views, &story.wanted})
        for (const GripView& view : *views)
            sum += view.height_to_width();
    return std::max(sum, 0.1);
}

} // namespace

Section hold_page(const figure::Easel& easel, const Story& story) {
    Section section{.name = "hold", .title = easel.words.say("page.hold.question")};
    offer_lines(easel, section, easel.words.say("notes.blank"));
    const double room = easel.theme.live(false).height;
    const auto build = [&](double k, bool with_strip) {
        section.blocks = hold_blocks(easel, story, columns(easel, 2) * k, with_strip);
        return total_height(section.blocks);
    };
    const double slope = columns(easel, 2) * heights_to_widths(story);
    // The largest hands with which the page holds all; the strip only where they stay large.
    if (story.strength &&
        built_to_fit(1.05, 0.84, 0.05, slope, room, [&](double k) { return build(k, true); }))
        return section;
    const double least = std::max(0.58, smallest_hand / columns(easel, 2));
    if (!built_to_fit(1.05, least, 0.05, slope, room, [&](double k) { return build(k, false); }))
        build(std::max(0.85, least), false); // then over two sides, with room for words
    return section;
}

} // namespace page
