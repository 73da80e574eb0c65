#include "words/lines.hpp"

#include <algorithm>

namespace words {

namespace {

constexpr std::string_view blanks = " \t\r";

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

bool leads(char byte) { return (static_cast<unsigned char>(byte) & 0xC0) != 0x80; }

std::uint32_t columns(std::string_view text) {
    return static_cast<std::uint32_t>(std::ranges::count_if(text, leads));
}

/// UTF-16 units of a UTF-8 text: one a code point, two beyond the basic plane.
std::size_t wide_units(std::string_view text) {
    const auto pairs = std::ranges::count_if(
        text, [](char byte) { return static_cast<unsigned char>(byte) >= 0xF0; });
    return columns(text) + static_cast<std::size_t>(pairs);
}

bool is_key(std::string_view text) {
    return !text.empty() && std::ranges::all_of(text, [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '.' || c == '-';
    });
}

/// Adds `part`, a piece of `whole`, to the line's text.
void extend(Line& line, std::uint32_t number, std::string_view whole, std::string_view part) {
    if (part.empty()) return;
    if (!line.text.empty()) line.text += ' ';
    const auto before = whole.substr(0, static_cast<std::size_t>(part.data() - whole.data()));
    line.stretches.push_back({wide_units(line.text), number, columns(before) + 1});
    line.text += part;
}

} // namespace

diag::Span Line::place(const diag::Source& source, std::size_t offset) const {
    diag::Span span{&source, line, 1, static_cast<std::uint32_t>(key.size())};
    for (const auto& stretch : stretches)
        if (stretch.at <= offset)
            span = {&source, stretch.line,
                    stretch.column + static_cast<std::uint32_t>(offset - stretch.at), 1};
    return span;
}

std::vector<Line> read_lines(const diag::Source& source, diag::Findings& findings) {
    std::vector<Line> lines;
    bool open = false; // a line is there that may be continued
    for (std::uint32_t number = 1; number <= source.line_count(); ++number) {
        auto whole = source.line(number);
        if (number == 1 && whole.starts_with("\xEF\xBB\xBF")) whole.remove_prefix(3);
        const auto text = trimmed(whole);
        if (text.empty() || text.front() == '#') continue;
        if (blanks.find(whole.front()) != std::string_view::npos) {
            if (open)
                extend(lines.back(), number, whole, text);
            else
                findings.error({&source, number, 1, 1}, "an indented line continues no sentence",
                               "start a line of its own with 'key = '");
            continue;
        }
        const auto equals = text.find('=');
        const auto key = trimmed(text.substr(0, equals));
        open = equals != std::string_view::npos && is_key(key);
        if (!open) {
            findings.error(
                {&source, number, 1, columns(key)}, "expected 'key = sentence'",
                "indent a line that continues the sentence above; start a comment with #");
            continue;
        }
        lines.push_back({std::string(key), {}, number, {}});
        extend(lines.back(), number, whole, trimmed(text.substr(equals + 1)));
    }
    return lines;
}

} // namespace words
