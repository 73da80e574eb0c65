#include "report/held.hpp"

#include "page/parts.hpp"

#include <algorithm>

namespace report {

namespace {

constexpr double label_width = 130;

std::size_t letters(const std::string& text) {
    return static_cast<std::size_t>(std::ranges::count_if(
        text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

page::Block row_block(const figure::Easel& easel, const HeldRow& row) {
    if (row.label.empty()) return page::text_block(easel, theme::Text::body, row.words);
    page::Block block{.name = row.label, .role = "P"};
    block.space_before = 3;
    block.pieces.push_back({page::labelled(easel, row.label, theme::Text::body, row.words,
                                           page::column_width(easel), label_width)});
    return block;
}

} // namespace

std::string held_text(const Held& held) {
    std::string out = held.title + "\n" + std::string(letters(held.title), '=') + "\n";
    for (const HeldPart& part : held.parts) {
        out += "\n" + part.title + "\n";
        for (const HeldRow& row : part.rows)
            out += "  " + (row.label.empty() ? row.words : row.label + ": " + row.words) + "\n";
    }
    return out;
}

page::Flowed held_page(const figure::Easel& easel, const Held& held) {
    page::Section section{.name = "held", .title = held.title};
    section.blocks.push_back(page::page_title(easel, held.title));
    for (const HeldPart& part : held.parts) {
        section.blocks.push_back(page::heading(easel, part.title));
        for (const HeldRow& row : part.rows)
            section.blocks.push_back(row_block(easel, row));
    }
    page::Flowed out =
        page::flow({section}, easel.theme, [](page::Sheet&, std::size_t, std::size_t) {});
    while (out.book.sheets.size() > 1 && out.book.sheets.back().marks.empty())
        out.book.sheets.pop_back();
    out.book.title = held.title;
    return out;
}

} // namespace report
