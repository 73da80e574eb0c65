#include "record/unit_size.hpp"

#include "unit/quantity.hpp"

#include <algorithm>
#include <array>

namespace record {

namespace {

struct UnitWord {
    unit::Kind kind;
    std::string_view word;
    double size;
};

constexpr std::array unit_words{
    UnitWord{unit::Kind::angle, "°", 1},
    UnitWord{unit::Kind::angle, "º", 1},
    UnitWord{unit::Kind::angle, "deg", 1},
    UnitWord{unit::Kind::angle, "degree", 1},
    UnitWord{unit::Kind::angle, "degrees", 1},
    UnitWord{unit::Kind::spin, "rpm", 1},
    UnitWord{unit::Kind::spin, "1/min", 1},
    UnitWord{unit::Kind::small_length, "mm", 1},
    UnitWord{unit::Kind::small_length, "cm", 10},
    UnitWord{unit::Kind::small_length, "in", 25.4},
    UnitWord{unit::Kind::length, "m", 1},
    UnitWord{unit::Kind::length, "metre", 1},
    UnitWord{unit::Kind::length, "metres", 1},
    UnitWord{unit::Kind::length, "meters", 1},
    UnitWord{unit::Kind::length, "yd", unit::metres_in_a_yard},
    UnitWord{unit::Kind::length, "yds", unit::metres_in_a_yard},
    UnitWord{unit::Kind::length, "yard", unit::metres_in_a_yard},
    UnitWord{unit::Kind::length, "yards", unit::metres_in_a_yard},
    UnitWord{unit::Kind::length, "ft", unit::metres_in_a_foot},
    UnitWord{unit::Kind::length, "feet", unit::metres_in_a_foot},
    UnitWord{unit::Kind::speed, "mph", unit::mps_in_a_mph},
    UnitWord{unit::Kind::speed, "km/h", unit::mps_in_a_kmh},
    UnitWord{unit::Kind::speed, "kmh", unit::mps_in_a_kmh},
    UnitWord{unit::Kind::speed, "kph", unit::mps_in_a_kmh},
    UnitWord{unit::Kind::speed, "m/s", 1},
    UnitWord{unit::Kind::speed, "mps", 1},
};

} // namespace

std::optional<double> unit_size(unit::Kind kind, std::string_view word) {
    const auto same_letter = [](char a, char b) {
        return a == (b >= 'A' && b <= 'Z' ? static_cast<char>(b - 'A' + 'a') : b);
    };
    for (const UnitWord& row : unit_words)
        if (row.kind == kind && std::ranges::equal(row.word, word, same_letter)) return row.size;
    return {};
}

} // namespace record
