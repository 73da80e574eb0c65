// The units a page, a table or a record speaks in.
#pragma once

#include "unit/measure.hpp"

#include <optional>
#include <string_view>

namespace unit {

enum class Distance : std::uint8_t { metres, yards };
enum class Speed : std::uint8_t { metres_per_second, kilometres_per_hour, miles_per_hour };

struct Units {
    Distance distance = Distance::metres;
    Speed speed = Speed::kilometres_per_hour;
    friend bool operator==(const Units&, const Units&) = default;
};

/// How many SI units (metres, m/s, degrees, rpm; millimetres for strike) one display unit is.
double size_of_unit(Kind kind, Units units);

/// "m", "yd", "mph", "km/h", "m/s", "°", "rpm", "mm".
std::string_view symbol(Kind kind, Units units);

std::optional<Distance> distance_named(std::string_view word); ///< m, metres, meters, yd, yards
std::optional<Speed> speed_named(std::string_view word);       ///< mph, km/h, kmh, m/s

} // namespace unit
