// What is drawn over the end of the handle: its cap, the pad, the gap or where they touch.
#pragma once

#include "hand/plate.hpp"
#include "hand/reading.hpp"

namespace hand {

/// A ring and the vent hole.
void add_butt_cap(Plate& plate, const Limbs& limbs);
/// Whether the room between handle and pad can be seen.
bool has_gap(const ButtContact& contact);
/// Hatch over the flesh of the pad, clear of the gap or of the arrow; `k` is the size of the hand.
void hatch_pad(Plate& plate, const Limbs& limbs, const ButtContact& contact, double k);
/// The same seen from the side of the fingers, above the handle.
void hatch_pad_beside(Plate& plate, const Limbs& limbs, double k);
/// The room between handle and pad: a dark hole.
void add_gap(Plate& plate, const Limbs& limbs, const ButtContact& contact);
/// An arrow where the pad presses on the handle.
void add_contact(Plate& plate, const Limbs& limbs, const ButtContact& contact, double k);

} // namespace hand
