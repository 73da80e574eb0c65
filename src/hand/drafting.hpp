// Straight lines, arrows and ticks laid over a traced hand, page millimetres.
#pragma once

#include "hand/plate.hpp"

namespace hand {

Line straight(Dot from, Dot to, Pen pen);
/// A filled head with its point at `tip`.
void add_arrow_head(Plate& plate, Dot tip, Dot way, double size);
/// An arrow that says where something pushes or moves; `k` is the size of the hand.
void add_arrow(Plate& plate, Dot from, Dot to, double k);
/// A tick outside the hand for a knuckle that counts, from its outline outwards; in two dashes for
/// one that shows by half.
void add_tick(Plate& plate, Dot knuckle, Dot way, double k, bool half);

} // namespace hand
