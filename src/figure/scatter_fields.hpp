// What the ball does in each of the four fields of the square of face against path.
#pragma once

#include "figure/easel.hpp"

#include <vector>

namespace figure {

/// The square as the words see it.
struct FieldPlan {
    ink::Rect box;
    double reach = 10; ///< half of each axis, degrees
    double face_share = 0.69;
    double start_step = 0, curve_step = 0;           ///< between thin lines, degrees; 0: none drawn
    ink::Rect wanted{};                              ///< hatched
    std::vector<ink::Rect> shots = {}, middles = {}; ///< never covered where there is a choice
};

/// Words in each field, where they cross the fewest lines and cover no shot. Gives their boxes.
std::vector<ink::Rect> draw_fields(ink::Drawing& d, const Easel& easel, const FieldPlan& plan);

} // namespace figure
