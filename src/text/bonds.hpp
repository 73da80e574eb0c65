// Spaces at which a line must not end: "14 May", "Page 5", "→ two".
#pragma once

#include <string_view>
#include <vector>

namespace text {

/// Offsets of the spaces that hold together what is read together: a number and what it counts, a
/// name and its number at the end of a phrase, a letter and its name, an arrow and where it leads,
/// a dash and what it follows. In order; never two words of much length.
std::vector<std::size_t> bonds(std::string_view words);

/// Whether a last line of that width is so little of `room` that a word more should join it.
inline bool is_runt(std::string_view line, double width, double room) {
    return width < room * (line.find(' ') == line.npos ? 0.3 : 0.15);
}

} // namespace text
