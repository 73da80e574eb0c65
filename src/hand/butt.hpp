// What is drawn over the end of the handle: its cap, the pad, the gap or where they touch.
#pragma once

#include "hand/plate.hpp"
#include "hand/reading.hpp"

namespace hand {

/// A ring and the vent hole.
void add_butt_cap(Plate& plate, const Limbs& limbs);
/// Hatch over the flesh of the pad, from `near` to `far` beyond the flank.
void hatch_pad(Plate& plate, const Limbs& limbs, double angle, double near, double far);
/// The room between handle and pad as daylight: white, outlined, measured by two arrows.
void add_gap(Plate& plate, const Limbs& limbs, const ButtContact& contact, double k);
/// A heavy arc where the pad lies on the handle.
void add_contact(Plate& plate, const Limbs& limbs, const ButtContact& contact);

} // namespace hand
