#include "shots/odd.hpp"

#include "shots/columns.hpp"

#include <algorithm>

namespace shots {

diag::Span place_of(const Shot& shot, unit::Measure measure, const diag::Source& source) {
    const std::uint32_t offset = shot.place[static_cast<std::size_t>(measure)];
    if (offset == 0) return source.in_line(shot.line, 0);
    const std::string& text = source.text();
    const std::size_t end = std::min(text.find_first_of(",;\t\n\r", offset), text.size());
    return source.at(offset, end - offset);
}

void warn(const Table& table, const Odd& odd, diag::Span place, std::string what, std::string hint,
          diag::Findings& findings) {
    if (odd.count > 1)
        what += " in " + std::to_string(odd.count) + " of " + count_of(table.shots.size(), "shot");
    findings.warning(place, std::move(what), std::move(hint));
}

} // namespace shots
