#include "shots/grid.hpp"

#include <algorithm>
#include <array>

namespace shots {

namespace {

/// Which separator the line has most of; a tie goes to the one that is rarer in plain text.
char separator_of(std::string_view line) {
    constexpr std::array<char, 3> candidates{';', '\t', ','};
    std::array<std::size_t, 3> counts{};
    bool inside = false;
    for (const char c : line) {
        if (c == '"') inside = !inside;
        const auto at = std::ranges::find(candidates, c);
        if (!inside && at != candidates.end())
            ++counts[static_cast<std::size_t>(at - candidates.begin())];
    }
    const auto most = std::ranges::max_element(counts);
    return *most == 0 ? ',' : candidates[static_cast<std::size_t>(most - counts.begin())];
}

bool line_end(char c) { return c == '\n' || c == '\r'; }

} // namespace

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view no_break = "\xC2\xA0";
    for (;;) {
        if (text.starts_with(' ') || text.starts_with('\t'))
            text.remove_prefix(1);
        else if (text.ends_with(' ') || text.ends_with('\t'))
            text.remove_suffix(1);
        else if (text.starts_with(no_break))
            text.remove_prefix(2);
        else if (text.ends_with(no_break))
            text.remove_suffix(2);
        else
            return text;
    }
}

Grid::Grid(const diag::Source& source, diag::Findings& findings)
    : source_(&source) {
    const std::string& text = source.text();
    std::size_t at = 0;
    std::uint32_t line = 1;
    while (at < text.size() && line_end(text[at]))
        line += text[at++] == '\n' ? 1U : 0U;
    const std::string_view first = source.line(line);
    separator_ = separator_of(first);
    if (first.size() == 5 && first.starts_with("sep=")) { // a spreadsheet's own way to name it
        separator_ = first[4];
        at = std::min(text.find('\n', at), text.size() - 1) + 1;
        ++line;
    }
    cells_.reserve(text.size() / 5);
    while (at < text.size() && !broken_)
        read_row(at, line, findings);
}

/// Reads the cell at `at`; returns where its separator or line end stands.
std::size_t Grid::read_cell(std::size_t at, diag::Findings& findings) {
    const std::string& text = source_->text();
    std::size_t start = at;
    while (start < text.size() && text[start] == ' ')
        ++start;
    const bool quoted = start < text.size() && text[start] == '"';
    std::size_t end = quoted ? start + 1 : at;
    if (quoted) {
        for (; end < text.size(); ++end)
            if (text[end] == '"' && !(end + 1 < text.size() && text[end + 1] == '"'))
                break;
            else if (text[end] == '"')
                ++end;
        if (end >= text.size()) {
            findings.error(source_->at(start), "the quote that opens here is not closed",
                           "take the quote away, or close it before the next separator");
            broken_ = true;
        }
    }
    const std::size_t inside = std::min(end, text.size());
    while (end < text.size() && text[end] != separator_ && !line_end(text[end]))
        ++end;
    end = std::min(end, text.size());
    if (quoted && !broken_) check_quoted(start, inside, findings);
    const std::size_t from = quoted ? start : at;
    cells_.push_back(
        {static_cast<std::uint32_t>(from), static_cast<std::uint32_t>(end - from), quoted});
    return end;
}

/// A remark may go over lines, a quote that was never meant to be closed takes in whole rows.
/// Commas stand in prose, too, so they tell only when there are as many as in a row.
void Grid::check_quoted(std::size_t open, std::size_t close, diag::Findings& findings) {
    const std::string_view held = std::string_view(source_->text()).substr(open, close - open);
    if (held.find_first_of("\r\n") == std::string_view::npos) return;
    const std::size_t width = rows_.empty() ? 1 : rows_.front().count;
    const std::size_t least = separator_ == ',' ? std::max<std::size_t>(2, width) - 1 : 1;
    if (static_cast<std::size_t>(std::ranges::count(held, separator_)) < least) return;
    const std::uint32_t first = source_->at(open).line + 1, last = source_->at(close).line;
    findings.error(source_->at(open),
                   "the quote that opens here takes in " +
                       (first >= last
                            ? "line " + std::to_string(last)
                            : "lines " + std::to_string(first) + " to " + std::to_string(last)) +
                       ", which would be lost as shots",
                   "close the quote in this line, or take it away; a quote inside a quoted cell is "
                   "written twice");
    broken_ = true;
}

void Grid::read_row(std::size_t& at, std::uint32_t& line, diag::Findings& findings) {
    const std::string& text = source_->text();
    Row row{cells_.size(), 0, line};
    bool any = false;
    for (;;) {
        const std::size_t end = read_cell(at, findings);
        const Cell& cell = cells_.back();
        any = any || !raw(cell).empty();
        if (cell.quoted)
            line += static_cast<std::uint32_t>(std::count(
                text.begin() + cell.offset, text.begin() + cell.offset + cell.bytes, '\n'));
        at = end + 1;
        if (end >= text.size() || line_end(text[end])) {
            if (end + 1 < text.size() && text[end] == '\r' && text[end + 1] == '\n') ++at;
            break;
        }
    }
    ++line;
    row.count = cells_.size() - row.first;
    if (any)
        rows_.push_back(row);
    else
        cells_.resize(row.first);
}

std::string_view Grid::raw(const Cell& cell) const {
    std::string_view text = std::string_view(source_->text()).substr(cell.offset, cell.bytes);
    if (!cell.quoted) return trimmed(text);
    text.remove_prefix(1);
    const std::size_t close = text.rfind('"');
    return trimmed(close == std::string_view::npos ? text : text.substr(0, close));
}

std::string Grid::text(const Cell& cell) const {
    const std::string_view inside = raw(cell);
    std::string text;
    for (std::size_t i = 0; i < inside.size(); ++i) {
        const char c = inside[i];
        if (cell.quoted && c == '"' && i + 1 < inside.size() && inside[i + 1] == '"') ++i;
        text += line_end(c) ? ' ' : c;
    }
    return text;
}

diag::Span Grid::span(const Cell& cell) const {
    const std::string_view text = raw(cell);
    if (text.empty()) return source_->at(cell.offset, std::max(cell.bytes, 1U));
    return source_->at(static_cast<std::size_t>(text.data() - source_->text().data()), text.size());
}

} // namespace shots
