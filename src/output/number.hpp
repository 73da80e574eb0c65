// Coordinates as text for formats of machines: always a point, never the locale.
#pragma once

#include <array>
#include <charconv>
#include <cmath>
#include <string>

namespace output {

/// `value` with `decimals` digits, half away from zero, never "-0.0".
inline std::string fixed(double value, int decimals) {
    const double scale = std::pow(10.0, decimals);
    double rounded = std::round(value * scale) / scale;
    if (rounded == 0) rounded = 0;
    std::array<char, 330> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), rounded,
                                   std::chars_format::fixed, decimals)
                         .ptr;
    return {buffer.data(), end};
}

} // namespace output
