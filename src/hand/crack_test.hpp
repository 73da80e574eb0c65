// What two neighbouring pixels say about the border between them.
#pragma once

#include "hand/cracks.hpp"

namespace hand {

inline constexpr float certain_jump = 2.0f, faint_jump = 0.55f; ///< steps in depth, millimetres
inline constexpr float certain_crease = 0.788f,
                       faint_crease = 0.920f; ///< cosines of 38 and 23 degrees

struct Border {
    bool outline = false, crease = false, faint = false;
    float jump = 0;
    bool any() const { return outline || crease || faint || jump > faint_jump; }
};

inline Border border(const Depth& d, const Grid<Part>& part, int r, int c, int r2, int c2) {
    Border b;
    const Part p = part(r, c), q = part(r2, c2);
    if (p != q) {
        b.outline = true;
        return b;
    }
    if (p == Part::paper) return b;
    const bool sideways = r == r2;
    const auto slope = [&](int i, int j) {
        const float g = sideways ? d.nx(i, j) : -d.ny(i, j);
        return -g / std::max(d.nz(i, j), .05f);
    };
    // The flatter side predicts the step.
    const float ga = slope(r, c), gb = slope(r2, c2);
    const float predicted = (std::abs(ga) < std::abs(gb) ? ga : gb) * float(d.pixel);
    b.jump = std::abs(d.z(r2, c2) - d.z(r, c) - predicted) - std::abs(predicted) * .8f;
    if (d.id(r, c) != d.id(r2, c2)) {
        const float cosine =
            d.nx(r, c) * d.nx(r2, c2) + d.ny(r, c) * d.ny(r2, c2) + d.nz(r, c) * d.nz(r2, c2);
        b.crease = cosine < certain_crease;
        b.faint = cosine < faint_crease;
    }
    return b;
}

} // namespace hand
