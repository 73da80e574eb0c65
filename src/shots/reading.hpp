// One cell as a number: "3.2", "-3,2", "3.2 R", "L 3.2", "150 yd", "6,840", "" and "n/a".
#pragma once

#include "unit/measure.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace shots {

enum class Side : std::uint8_t { none, left, right };

struct Reading {
    enum class State : std::uint8_t { missing, number, wrong };
    State state = State::missing;
    double value = 0; ///< as written, in its unit; never negative when a side is written
    int decimals = 0;
    Side side = Side::none;
    std::optional<double> unit; ///< size of a unit written in the cell
    std::string hint;           ///< the way out of a wrong cell
};

/// Reads a cell of that measure. L and R are sides for measures that have sides. Both decimal marks
/// are read; for spin a mark with three digits behind it parts the thousands.
Reading read_cell(std::string_view text, unit::Measure measure);

/// True for "", "-", "n/a" and their like: not measured.
bool not_measured(std::string_view text);

} // namespace shots
