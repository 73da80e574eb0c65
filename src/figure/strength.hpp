// How far the lead hand is turned: three hands from weak to strong, this student's place below.
#pragma once

#include "figure/easel.hpp"
#include "hand/hand.hpp"

#include <array>
#include <optional>

namespace figure {

/// Knuckles that the three hands show: weak, neutral, strong (common practice, no source).
inline constexpr std::array<double, 3> strip_knuckles{1, 2, 3};

struct StrengthInput {
    std::array<hand::Picture, 3> hands; ///< at `strip_knuckles`
    unit::Hand hand = unit::Hand::right;
    std::optional<double> before, after; ///< knuckles seen, 0 to 4
    double wanted = 2;
};

/// No degrees: a strength is a place between three pictures, nothing finer. Weak is at the left for
/// both hands.
ink::Drawing strength_strip(const Easel& easel, const StrengthInput& input, double width);

} // namespace figure
