// The flesh of a solved hand as tapered capsules that melt into each other.
#pragma once

#include "hand/limbs.hpp"

#include <vector>

namespace hand {

/// Which surface a capsule belongs to. Surfaces meet with a crease, capsules of one surface melt.
enum Surface : int {
    palm_side = 0,
    first_finger = 1,
    thumb_side = 5,
    rod_surface = 6,
    second_hand = 10
};

struct Capsule {
    Vec a, b; ///< hand frame
    double ra = 1, rb = 1;
    double melt = 0; ///< width of the fillet with what came before it on the same surface
    int surface = palm_side;
    bool deep = false; ///< palm, heel pad, wrist: what the handle presses into
};

std::vector<Capsule> flesh(const Limbs& limbs);

} // namespace hand
