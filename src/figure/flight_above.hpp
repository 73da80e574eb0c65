// Flights seen from above: where every ball went, and the middle one of each block.
#pragma once

#include "figure/easel.hpp"
#include "figure/symbol.hpp"

#include <string>
#include <vector>

namespace figure {

/// Metres from the tee: along the target line, right of it, up.
struct FlightPoint {
    double along = 0, right = 0, up = 0;
};
using FlightLine = std::vector<FlightPoint>; ///< from the tee to the landing spot

/// One block.
struct FlightRow {
    Symbol symbol = Symbol::before;
    std::string name;              ///< "Before"
    std::vector<FlightLine> shots; ///< every shot that counts
    FlightLine typical;            ///< of the middle shot; empty when there is none
    bool estimated = false;        ///< computed, not measured
};

struct FlightInput {
    std::vector<FlightRow> rows; ///< before, after, cold
    std::string message;         ///< alternative text
};

/// The target lies up the page, or to the right when `width` is the longer side. Sideways and along
/// have one scale; only where that would hide the spread is sideways drawn two or three times as
/// wide, and the figure says so. The drawing may be smaller than asked for.
ink::Drawing flight_above(const Easel& easel, const FlightInput& input, double width,
                          double height);

} // namespace figure
