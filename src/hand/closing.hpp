// Closing one finger, joint by joint, onto whatever is in its way.
#pragma once

#include "hand/limbs.hpp"

#include <functional>

namespace hand {

/// Free space round a ball at a point of the hand frame; negative = pressed in.
using Clearance = std::function<double(Vec point, double ball)>;

struct Curl {
    Vec knuckle, axis, out; ///< root, flexion axis, direction of the straight finger
};

/// Lays out joints and bones for given flexions (degrees, towards the palm).
PosedFinger bent(const Ray& ray, const Curl& curl, std::array<double, 3> angle);

/// Closes until each phalanx is pressed 0.8 mm in, or its joint's limit is reached.
std::array<double, 3> close_finger(const Ray& ray, const Curl& curl, const Clearance& clear);

} // namespace hand
