// The far end of the club in the golfer's-eye view.
#pragma once

#include "hand/picture.hpp"

namespace hand {

/// Where the shaft comes out behind the break of the handle, the way it goes (unit length), and the
/// hand's size against the usual one.
struct ClubPlace {
    Dot from, along;
    double size = 1;
};

/// Shaft and iron head beyond the break, ball, and how far the leading edge is from square; `face`
/// degrees, right (open) positive.
void add_club(Picture& picture, const ClubPlace& place, double face);

} // namespace hand
