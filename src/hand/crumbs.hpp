// Regions of a picture that are too small to be read.
#pragma once

#include "hand/cracks.hpp"

namespace hand {

/// Hands them whole to one neighbour: to the paper where they border on it, else to the hand, else
/// where their border is longest. `area` in pixels by label; views of the paper below `least_hole`
/// square millimetres close. Returns which pixels moved.
std::vector<std::uint8_t> drop_crumbs(Regions& regions, const std::vector<int>& area, double pixel,
                                      double least_hole);

} // namespace hand
