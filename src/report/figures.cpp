#include "report/figures.hpp"

#include "figure/dots.hpp"
#include "figure/drill_picture.hpp"
#include "figure/grip.hpp"
#include "page/evidence_rows.hpp"
#include "page/hold_words.hpp"
#include "page/parts.hpp"
#include "page/verdict.hpp"

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
    add(view.before, "grip.before");
    add(view.after, view.before ? "grip.after" : "grip.now");
    auto drawing = page::side_by_side(std::move(cells));
    drawing.message = easel.words.say(page::view_key(view.view));
    return drawing;
}

} // namespace

std::vector<std::string> figure_names(const page::Story& story) {
    std::vector<std::string> names;
    for (const auto& view : story.views)
        names.push_back(short_name(view.view));
    if (page::aim_of(story)) names.emplace_back("aim");
    for (const auto& e : story.evidence)
        names.push_back("strip-" + page::key_of(e.measure));
    for (std::size_t i = 0; i < story.drills.size(); ++i)
        names.push_back("drill-" + std::to_string(i + 1));
    return names;
}

std::optional<ink::Drawing> figure_named(const figure::Easel& easel, const page::Story& story,
                                         std::string_view name) {
    const double width = page::column_width(easel);
    for (const auto& view : story.views)
        if (short_name(view.view) == name) return pair(easel, story, view);
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
    return std::nullopt;
}

} // namespace report
