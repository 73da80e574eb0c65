// The steps of solving a hold.
#pragma once

#include "hand/closing.hpp"

#include <optional>

namespace hand {

/// Something else in the way of some fingers (the other hand), given in this hand's grip frame.
struct Obstacle {
    Clearance clear;
    std::array<bool, fingers> minded{};
};

/// Centre line of the handle on the index ray and on the little ray, hand frame; `off` shifts each
/// end along the palm's normal.
struct AxisPoints {
    Vec index, little;
};
AxisPoints place_handle(const Anatomy& body, const Hold& hold,
                        const std::array<Vec, fingers>& knuckle, std::array<double, 2> off);

/// Joints of the thumb and the direction out of its nail. Needs handle, knuckles and grip frame.
void place_thumb(Limbs& limbs);

/// Wrist and forearm, at most 52 degrees from straight.
void place_forearm(Limbs& limbs);

Limbs solve(const Anatomy& body, const Hold& hold, const Obstacle& obstacle);

} // namespace hand
