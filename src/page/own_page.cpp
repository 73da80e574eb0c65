#include "page/own_page.hpp"

#include "page/log_notes.hpp"
#include "page/parts.hpp"

namespace page {

using figure::Easel;
using theme::Text;

namespace {

/// Room to write on down to the foot of the page, where that is more than a line or two.
void add_lines(const Easel& easel, Section& section, std::string_view title) {
    const double whole = easel.theme.live(true).height, used = total_height(section.blocks);
    const double rest = whole - used - 16; // of the first page; a longer text gets none
    if (rest < 80) return;
    Block block{.name = "lines"};
    block.space_before = 14;
    block.pieces.push_back({lines_to_write_on(easel, title, column_width(easel), rest)});
    section.blocks.push_back(std::move(block));
}

} // namespace

Section own_page(const Easel& easel, const theme::Planned& planned) {
    Section section{.name = {}, .title = planned.title};
    section.blocks.push_back(page_title(easel, planned.title));
    for (const auto& paragraph : planned.text)
        section.blocks.push_back(text_block(easel, Text::coach, paragraph, 8));
    if (planned.lines) add_lines(easel, section, easel.words.say("notes.blank"));
    return section;
}

Section lines_page(const Easel& easel) {
    Section section{.name = "lines"};
    const double height = easel.theme.live(true).height;
    Block block{.name = "lines"};
    block.pieces.push_back(
        {lines_to_write_on(easel, easel.words.say("notes.blank"), column_width(easel), height)});
    section.blocks.push_back(std::move(block));
    return section;
}

} // namespace page
