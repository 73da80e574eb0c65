#include "diag/utf8.hpp"

#include <algorithm>
#include <array>

namespace diag {

namespace {

constexpr bool continues(char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; }

struct Range {
    char32_t first, last;
};

constexpr std::array wide{Range{0x1100, 0x115F},   Range{0x2E80, 0x303E},  Range{0x3041, 0xA4CF},
                          Range{0xAC00, 0xD7A3},   Range{0xF900, 0xFAFF},  Range{0xFE30, 0xFE6F},
                          Range{0xFF00, 0xFF60},   Range{0xFFE0, 0xFFE6},  Range{0x1F300, 0x1F64F},
                          Range{0x1F900, 0x1F9FF}, Range{0x20000, 0x3FFFD}};
constexpr std::array marks{Range{0x0300, 0x036F}, Range{0x200B, 0x200F}, Range{0x20D0, 0x20F0},
                           Range{0xFE00, 0xFE0F}, Range{0xFE20, 0xFE2F}};

template <class Ranges>
bool holds(const Ranges& ranges, char32_t value) {
    return std::ranges::any_of(ranges,
                               [&](const Range& r) { return value >= r.first && value <= r.last; });
}

} // namespace

CodePoint first_code_point(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned lead = byte(0);
    if (lead < 0x80U) return {lead, 1, true};
    const std::uint32_t length = lead >= 0xF0U ? 4 : lead >= 0xE0U ? 3 : 2;
    if (lead < 0xC2U || lead > 0xF4U || text.size() < length) return {lead, 1, false};
    char32_t value = lead & (0x7FU >> length);
    for (std::uint32_t i = 1; i < length; ++i) {
        if (!continues(text[i])) return {lead, 1, false};
        value = (value << 6U) | (byte(i) & 0x3FU);
    }
    const bool overlong = (length == 3 && value < 0x800U) || (length == 4 && value < 0x10000U);
    const bool surrogate = value >= 0xD800U && value <= 0xDFFFU;
    if (overlong || surrogate || value > 0x10FFFFU) return {lead, 1, false};
    return {value, length, true};
}

std::uint32_t code_points(std::string_view text) {
    std::uint32_t count = 0;
    while (!text.empty()) {
        text.remove_prefix(first_code_point(text).bytes);
        ++count;
    }
    return count;
}

int columns_of(char32_t value) {
    if (value < 0x300) return 1;
    if (holds(marks, value)) return 0;
    return holds(wide, value) ? 2 : 1;
}

} // namespace diag
