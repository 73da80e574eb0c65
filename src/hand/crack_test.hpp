// What two neighbouring pixels say about the border between them.
#pragma once

#include "hand/cracks.hpp"

namespace hand {

inline constexpr float certain_jump = 2.0f, faint_jump = 0.55f; ///< steps in depth, millimetres
inline constexpr float folded = 3.0f; ///< times as much where a surface folds over itself
inline constexpr float certain_crease = 0.788f,
                       faint_crease = 0.920f; ///< cosines of 38 and 23 degrees

/// Slopes of the surface seen, along a row to the right and along a column downwards.
struct Slopes {
    Grid<float> right, below;
    explicit Slopes(const Depth& d)
        : right(d.id.width, d.id.height, 0)
        , below(d.id.width, d.id.height, 0) {
        for (std::size_t i = 0; i < right.size(); ++i) {
            if (d.id.cell.data()[i] < 0) continue;
            const float nz = std::max(d.nz.cell.data()[i], .05f);
            right.cell.data()[i] = -d.nx.cell.data()[i] / nz;
            below.cell.data()[i] = d.ny.cell.data()[i] / nz;
        }
    }
};

/// Flags of Cracks for the border between pixels `a` and `b` of one part that is not paper.
inline std::uint8_t border(const Depth& d, const Grid<float>& slope, std::size_t a, std::size_t b) {
    const auto at = [](const Grid<float>& g, std::size_t i) { return g.cell.data()[i]; };
    // The flatter side predicts the step.
    const float ga = at(slope, a), gb = at(slope, b);
    const float predicted = (std::abs(ga) < std::abs(gb) ? ga : gb) * float(d.pixel);
    const float jump = std::abs(at(d.z, b) - at(d.z, a) - predicted) - std::abs(predicted) * .8f;
    bool crease = false, faint = false;
    const bool meet = d.id.cell.data()[a] != d.id.cell.data()[b];
    const float calm = meet ? 1 : folded;
    if (meet) {
        const float cosine =
            at(d.nx, a) * at(d.nx, b) + at(d.ny, a) * at(d.ny, b) + at(d.nz, a) * at(d.nz, b);
        crease = cosine < certain_crease;
        faint = cosine < faint_crease;
    }
    if (crease || jump > certain_jump * calm) return Cracks::present | Cracks::strong;
    return faint || jump > faint_jump * calm ? Cracks::present : 0;
}

} // namespace hand
