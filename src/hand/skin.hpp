// Authored lines laid on the skin: nails, wrinkles, tendons, creases.
#pragma once

#include "hand/plate.hpp"

namespace hand {

struct SkinLines {
    bool nails = true, wrinkles = true, back = true, crease = false, palm = false;
};

void add_skin_lines(Plate& plate, const Limbs& limbs, const SkinLines& which);

/// A path near the skin, hand frame, laid on it where it is in sight; dotted as short strokes.
void add_skin_path(Plate& plate, const Limbs& limbs, const std::vector<Vec>& path, Pen pen,
                   bool dotted);

/// Middle of a glove's cuff, hand frame; the cuff is square to the carpus.
Vec cuff_of(const Limbs& limbs);

/// Cuff, seam and closure of a glove on the lead hand.
void add_glove_lines(Plate& plate, const Limbs& limbs);

} // namespace hand
