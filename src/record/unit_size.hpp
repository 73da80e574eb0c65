// Unit words as coaches and tables write them.
#pragma once

#include "unit/measure.hpp"

#include <optional>
#include <string_view>

namespace record {

/// How large a unit word is in SI (degrees, rpm, millimetres for strike) for that kind of measure:
/// "yd" is 0.9144 for lengths. Capitals do not matter. Nothing when the word is no unit of that
/// kind.
std::optional<double> unit_size(unit::Kind kind, std::string_view word);

} // namespace record
