#include "unit/display.hpp"

#include "unit/quantity.hpp"

namespace unit {

double size_of_unit(Kind kind, Units units) {
    switch (kind) {
    case Kind::length:
        return units.distance == Distance::yards ? metres_in_a_yard : 1.0;
    case Kind::speed:
        if (units.speed == Speed::miles_per_hour) return mps_in_a_mph;
        return units.speed == Speed::kilometres_per_hour ? mps_in_a_kmh : 1.0;
    case Kind::angle:
    case Kind::spin:
    case Kind::small_length:
        return 1.0;
    }
    return 1.0;
}

std::string_view symbol(Kind kind, Units units) {
    switch (kind) {
    case Kind::angle:
        return "°";
    case Kind::spin:
        return "rpm";
    case Kind::small_length:
        return "mm";
    case Kind::length:
        return units.distance == Distance::yards ? "yd" : "m";
    case Kind::speed:
        if (units.speed == Speed::miles_per_hour) return "mph";
        return units.speed == Speed::kilometres_per_hour ? "km/h" : "m/s";
    }
    return "";
}

std::optional<Distance> distance_named(std::string_view word) {
    if (word == "m" || word == "metres" || word == "meters") return Distance::metres;
    if (word == "yd" || word == "yds" || word == "yards") return Distance::yards;
    return std::nullopt;
}

std::optional<Speed> speed_named(std::string_view word) {
    if (word == "mph") return Speed::miles_per_hour;
    if (word == "km/h" || word == "kmh" || word == "kph") return Speed::kilometres_per_hour;
    if (word == "m/s" || word == "mps") return Speed::metres_per_second;
    return std::nullopt;
}

} // namespace unit
