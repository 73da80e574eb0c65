#include "page/log_page.hpp"

#include "page/log_grid.hpp"
#include "page/parts.hpp"

namespace page {

namespace {

using theme::Text;

/// The days that follow the first log, two weeks or twice one in large print.
std::vector<ink::Drawing> grids(const figure::Easel& easel, const LogCount& count, double width) {
    const double row = least_log_cell + 2;
    if (easel.theme.setting(Text::body).style.size < 14)
        return {log_grid(easel, count, log_days + 1, 2 * log_days, width, row)};
    const int week = log_days / 2;
    return {log_grid(easel, count, log_days + 1, log_days + week, width, row),
            log_grid(easel, count, log_days + week + 1, 2 * log_days, width, row)};
}

} // namespace

Section log_page(const figure::Easel& easel, const Story& story) {
    Section section;
    section.name = "log-2";
    section.title =
        easel.words.say("log.second", {{"first", log_days + 1}, {"last", 2 * log_days}});
    if (story.lesson.log_days <= log_days || story.drills.empty()) return section;
    const double width = column_width(easel);
    const bool junior = story.lesson.student.age == record::Age::junior;
    section.blocks.push_back(page_title(easel, section.title));
    section.blocks.push_back(text_block(easel, Text::body, easel.words.say("log.second.note"), 0));
    for (std::size_t i = 0; i < story.drills.size(); ++i) {
        section.blocks.push_back(
            heading(easel, easel.words.say("one.drill-reference",
                                           {{"n", i + 1}, {"name", story.drills[i].drill.name}})));
        Block block{.name = "log"};
        block.space_before = 4;
        if (junior)
            block.pieces.push_back({tagged(log_path(easel, width, 6 * least_log_cell), "Figure")});
        else
            for (auto& grid : grids(easel, log_count(story.drills[i]), width)) {
                grid.size.height += 8;
                block.pieces.push_back({std::move(grid)});
            }
        section.blocks.push_back(std::move(block));
    }
    return section;
}

} // namespace page
