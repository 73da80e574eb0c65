// Regions of a picture that are too small to be read.
#pragma once

#include "hand/cracks.hpp"

namespace hand {

/// Hands them whole to one neighbour: to the paper where they border on it, else flesh seen between
/// hand and handle to the handle, else where their border is longest. `area` in pixels by label.
/// Returns which pixels moved.
std::vector<std::uint8_t> drop_crumbs(Regions& regions, const std::vector<int>& area, double pixel);

} // namespace hand
