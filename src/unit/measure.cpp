#include "unit/measure.hpp"

#include <algorithm>

namespace unit {

namespace {

bool same_letter(char a, char b) {
    const auto plain = [](char c) { return c == '_' || c == '-' ? ' ' : c; };
    return plain(a) == plain(b);
}

} // namespace

std::optional<Measure> measure_named(std::string_view key) {
    const auto* found = std::ranges::find_if(
        measures, [&](const MeasureRow& r) { return std::ranges::equal(r.key, key, same_letter); });
    if (found == measures.end()) return std::nullopt;
    return found->measure;
}

} // namespace unit
