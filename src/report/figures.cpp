#include "report/figures.hpp"

#include <array>

#include "figure/credit_bars.hpp"
#include "figure/dots.hpp"
#include "figure/drill_picture.hpp"
#include "figure/flight_above.hpp"
#include "figure/flight_side.hpp"
#include "figure/grip.hpp"
#include "figure/grip_card.hpp"
#include "figure/impact_above.hpp"
#include "figure/loft_ladder.hpp"
#include "figure/scatter.hpp"
#include "hand/album.hpp"
#include "page/evidence_rows.hpp"
#include "page/hold_words.hpp"
#include "page/parts.hpp"
#include "page/verdict.hpp"
#include "page/why_inputs.hpp"
#include "report/tell_hold.hpp"
#include "words/date.hpp"

namespace report {

namespace {

/// "golfers-eye": the last part of a view's key.
std::string short_name(hand::View view) {
    const std::string key = page::view_key(view);
    return key.substr(key.rfind('.') + 1);
}

ink::Drawing pair(const figure::Easel& easel, const page::Story& story,
                  const page::GripView& view) {
    const double width = page::columns(easel, 3);
    std::vector<page::Cell> cells;
    double x = 0;
    const auto add = [&](const std::optional<hand::Picture>& picture, const char* key) {
        if (!picture) return;
        cells.push_back({figure::called_out(easel, *picture, story.lesson.student.hand.value,
                                            easel.words.say(key), {}, width),
                         x});
        x += width;
    };
    add(view.before, view.first_key);
    add(view.after, view.before ? view.second_key : "grip.now");
    auto drawing = page::side_by_side(cells);
    drawing.message = easel.words.say(page::view_key(view.view));
    return drawing;
}

} // namespace

namespace {

constexpr std::array outcome_names{"credit-start", "credit-curve", "credit-carry",
                                   "credit-offline"};

/// The figures of the page "why", where the shots allow them.
std::optional<ink::Drawing> why_figure(const figure::Easel& easel, const page::Story& story,
                                       std::string_view name) {
    const double wide = page::column_width(easel), half = page::columns(easel, 3);
    if (name == "scatter")
        if (const auto in = page::scatter_input(easel, story))
            return figure::scatter(easel, *in, page::columns(easel, 4));
    if (name == "impact")
        if (const auto in = page::impact_input(easel, story))
            return figure::impact_above(easel, *in, wide);
    if (name == "ladder")
        if (const auto in = page::ladder_input(easel, story))
            return figure::loft_ladder(easel, *in, half, 90 * figure::mm);
    if (name == "flight-above" || name == "flight-side")
        if (const auto in = page::flight_input(easel, story))
            return name == "flight-above" ? figure::flight_above(easel, *in, half, 90 * figure::mm)
                                          : figure::flight_side(easel, *in, wide, 50 * figure::mm);
    if (!story.ball || !story.ball->credit) return std::nullopt;
    for (const auto outcome : page::credited(story))
        if (outcome_names[static_cast<std::size_t>(outcome)] == name)
            return figure::credit_bars(
                easel, page::credit_input(easel, *story.ball->credit, outcome), half);
    return std::nullopt;
}

} // namespace

figure::GripCardInput card_of(const figure::Easel& easel, const page::Story& story) {
    const auto& lesson = story.lesson;
    const hand::Wish target = target_wish(lesson);
    figure::GripCardInput in{.name = lesson.printed_name(),
                             .date = words::date_long(lesson.date.value, easel.words),
                             .hand = lesson.student.hand.value,
                             .target = {},
                             .after = std::nullopt,
                             .handle_diameter = hand::handle_diameter(target.build),
                             .checklist = page::look_lines(lesson, easel.words),
                             .targets = lesson.targets};
    hand::View eye = hand::View::golfers_eye;
    for (const auto& view : story.views)
        if (page::looks_down(view.view)) in.after = view.after, eye = view.view;
    in.target = hand::album().picture(target, eye); // both at one scale
    return in;
}

std::vector<std::string> figure_names(const figure::Easel& easel, const page::Story& story) {
    std::vector<std::string> names;
    for (const auto& view : story.views)
        names.push_back(short_name(view.view));
    if (story.strength) names.emplace_back("strength");
    names.emplace_back("grip-card");
    if (page::aim_of(story)) names.emplace_back("aim");
    for (const auto& e : story.evidence)
        names.push_back("strip-" + page::key_of(e.measure));
    for (const char* name :
         {"scatter", "impact", "ladder", "flight-above", "flight-side", outcome_names[0],
          outcome_names[1], outcome_names[2], outcome_names[3]})
        if (why_figure(easel, story, name)) names.emplace_back(name);
    for (std::size_t i = 0; i < story.drills.size(); ++i)
        names.push_back("drill-" + std::to_string(i + 1));
    return names;
}

std::optional<ink::Drawing> figure_named(const figure::Easel& easel, const page::Story& story,
                                         std::string_view name) {
    const double width = page::column_width(easel);
    for (const auto& view : story.views)
        if (short_name(view.view) == name) return pair(easel, story, view);
    if (story.strength && name == "strength")
        return figure::strength_strip(easel, *story.strength, page::columns(easel, 4));
    if (name == "grip-card") return figure::grip_card(easel, card_of(easel, story));
    if (const auto* aim = page::aim_of(story); aim && name == "aim")
        return figure::shot_by_shot(easel, page::dots_of(easel, story, *aim), width,
                                    84 * figure::mm);
    for (const auto& e : story.evidence)
        if ("strip-" + page::key_of(e.measure) == name)
            return page::aim_strip(easel, page::dots_of(easel, story, e), page::columns(easel, 3));
    for (std::size_t i = 0; i < story.drills.size(); ++i)
        if ("drill-" + std::to_string(i + 1) == name)
            return figure::drill_picture(easel, story.drills[i].drill.picture,
                                         story.lesson.student.hand.value, page::columns(easel, 3),
                                         60 * figure::mm);
    return why_figure(easel, story, name);
}

} // namespace report
