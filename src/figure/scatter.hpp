// Face against path, one square: where the ball starts and which way it turns.
#pragma once

#include "figure/easel.hpp"
#include "figure/symbol.hpp"

#include <optional>
#include <string>
#include <vector>

namespace figure {

struct ScatterShot {
    double face = 0, path = 0; ///< degrees, right positive
    bool set_aside = false;
};

struct ScatterRow {
    Symbol symbol = Symbol::before;
    std::string name;
    std::vector<ScatterShot> shots;
    double face = 0, path = 0; ///< medians of the shots that count
};

struct ScatterInput {
    std::vector<ScatterRow> rows;           ///< in the order before, after, cold
    double face_share = 0.69;               ///< of the start direction, for this club
    std::optional<double> curve_per_degree; ///< metres of curve for a degree of face to path
    std::optional<std::pair<double, double>> wanted; ///< of the face
    double reach = 0;                                ///< half the axis in degrees; 0 fits the shots
    std::string message;
};

/// A square of that side plus the words around it. Shots beyond the axes become arrows at the edge.
ink::Drawing scatter(const Easel& easel, const ScatterInput& input, double width);

/// Metres of curve from one drawn line of equal curve to the next, for the words under the figure;
/// nothing when those lines are not drawn.
std::optional<double> curve_step(const Easel& easel, const ScatterInput& input);

} // namespace figure
