// Numbers with a unit behind them, and ranges with sides: "120 m", "2 L to 2 R", "85 to 90 mph".
#pragma once

#include "record/unit_size.hpp"
#include "unit/display.hpp"
#include "yaml/field.hpp"

#include <optional>

namespace record {

/// A number with an optional unit; without one it is in `units`.
std::optional<double> read_quantity(const yaml::Field& field, unit::Kind kind, unit::Units units);

struct Range {
    double least = 0, most = 0;
};

/// "24 to 28" or, for a measure with sides, "2 L to 2 R"; "square" and 0 need no side. Sides and
/// units may follow either number; a unit behind the second counts for both. Attack takes up and
/// down.
std::optional<Range> read_range(const yaml::Field& field, unit::Measure measure, unit::Units units);

} // namespace record
