// Signs that say how much room a drill needs.
#pragma once

#include "drills/drill.hpp"
#include "figure/easel.hpp"

namespace page {

/// A square sign of that side: a seat, a swing with a ring of room, a flag.
ink::Drawing space_sign(const figure::Easel& easel, drills::Space space, double side);

} // namespace page
