// The far end of the club in the golfer's-eye view.
#pragma once

#include "hand/plate.hpp"

namespace hand {

/// Shaft and iron head beyond the break of the handle; `face` degrees, right (open) positive.
void add_club(Plate& plate, double scale, double face);

} // namespace hand
