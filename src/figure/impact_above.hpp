// Face and path at impact, seen from above: target up the page, right is right for both hands.
#pragma once

#include "figure/easel.hpp"
#include "figure/symbol.hpp"

#include <optional>
#include <string>
#include <vector>

namespace figure {

/// Middle shot of one block. Angles in degrees, right of the target positive; absent means not
/// measured and is left out.
struct Impact {
    Symbol symbol = Symbol::before;
    std::string name; ///< "Before"
    std::optional<double> face, path, start;
    bool face_estimated = false, path_estimated = false, start_estimated = false;
};

struct ImpactInput {
    std::vector<Impact> states; ///< before, after
    std::string message;        ///< alternative text
};

/// One panel a state, beside one another where the width allows, else under one another. Every
/// angle is drawn at its true size.
ink::Drawing impact_above(const Easel& easel, const ImpactInput& input, double width);

} // namespace figure
