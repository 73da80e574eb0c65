#include "page/parts.hpp"

#include <algorithm>

namespace page {

namespace {

constexpr double gutter = 20, paragraph_gap = 4; // points

struct Line {
    ink::Words words; ///< its baseline below the top of the line
    std::size_t paragraph = 0;
};

std::vector<Line> lines_of(const figure::Easel& easel, const theme::Setting& setting,
                           const std::vector<std::string>& paragraphs, double width) {
    std::vector<Line> out;
    for (std::size_t p = 0; p < paragraphs.size(); ++p) {
        const auto set = easel.type.set(paragraphs[p], setting.style, width, setting.leading);
        for (std::size_t i = 0; i < set.lines.size(); ++i) {
            out.push_back({set.lines[i], p});
            out.back().words.at.y -= static_cast<double>(i) * setting.leading;
        }
    }
    return out;
}

/// How many lines stand in the left column: half of them, and no line of a paragraph alone at
/// either side of the cut.
std::size_t left_column(const std::vector<Line>& lines) {
    const auto starts = [&](std::size_t i) {
        return i == 0 || i >= lines.size() || lines[i].paragraph != lines[i - 1].paragraph;
    };
    const auto good = [&](std::size_t cut) {
        return starts(cut) || (!starts(cut - 1) && !starts(cut + 1));
    };
    const std::size_t n = lines.size(), half = (n + 1) / 2;
    std::size_t best = half;
    for (const std::size_t cut : {half, half + 1, half - 1, half - 2})
        if (cut > 0 && cut <= n && good(cut) &&
            (!good(best) || std::max(cut, n - cut) < std::max(best, n - best)))
            best = cut;
    return best;
}

ink::Drawing two_columns(const std::vector<Line>& lines, double leading, double second) {
    ink::Drawing out;
    const std::size_t cut = left_column(lines);
    double y = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const bool first = i == 0 || lines[i].paragraph != lines[i - 1].paragraph;
        if (first && i > 0) out.add(ink::Tag{false, "P", {}});
        if (first) out.add(ink::Tag{true, "P", {}});
        if (i == cut) y = 0;
        if (first && y > 0) y += paragraph_gap;
        out.add(ink::moved(lines[i].words, {i < cut ? 0 : second, y}));
        out.size.height = std::max(out.size.height, y += leading);
    }
    if (!lines.empty()) out.add(ink::Tag{false, "P", {}});
    return out;
}

} // namespace

void add_small_print(std::vector<Block>& blocks, const figure::Easel& easel, theme::Text text,
                     const std::vector<std::string>& paragraphs, double space_before) {
    const auto& setting = easel.theme.setting(text);
    const double all = column_width(easel), half = (all - gutter) / 2;
    if (all <= setting.style.size * widest_measure * 1.3) {
        for (const auto& words : paragraphs)
            blocks.push_back(
                text_block(easel, text, words,
                           &words == &paragraphs.front() ? space_before : paragraph_gap, all));
        return;
    }
    ink::Drawing drawing =
        two_columns(lines_of(easel, setting, paragraphs, half), setting.leading, half + gutter);
    drawing.size.width = all;
    blocks.push_back(drawn_block("small print", std::move(drawing), space_before));
}

} // namespace page
