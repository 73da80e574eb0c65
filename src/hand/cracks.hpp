// Which borders between neighbouring pixels are lines of the drawing. A crack is the unit segment
// between two pixels; it lives on the grid of pixel corners.
#pragma once

#include "hand/trace.hpp"

#include <cstdint>

namespace hand {

enum class Part : std::uint8_t { paper, first, second, handle };

inline bool is_hand(Part p) { return p == Part::first || p == Part::second; }

struct Cracks {
    enum Flag : std::uint8_t { present = 1, strong = 2, outline = 4 };
    /// `across(r, c)`: from corner (r, c) to (r, c+1), under pixel (r-1, c).
    /// `down(r, c)`: from corner (r, c) to (r+1, c), right of pixel (r, c-1).
    Grid<std::uint8_t> across, down;

    int width() const { return across.width; } ///< corners in a row
    int height() const { return across.height; }
};

/// Pixels sorted into paper, hands and handle after slivers went to their neighbours.
struct Regions {
    Grid<Part> part;
    Grid<int> label;           ///< regions between lines, slivers merged away
    Grid<std::uint8_t> sliver; ///< pixels that changed region
    /// Flags of the crack to the right of a pixel and below it, as they were before that.
    Grid<std::uint8_t> right, below;
};

/// Regions that stay thinner than 1.7 mm are handed to their neighbours: no reader could tell them
/// from a fat line.
/// Views of the paper smaller than `least_hole` square millimetres close.
Regions regions(const Depth& depth, double least_hole = 10);

/// Cracks that are lines, weak ones only where they continue strong ones, without stubs and specks.
/// `faded` pixels have run out into the paper; between two `quiet` ones of a hand there is no line.
Cracks cracks(const Depth& depth, const Regions& regions, const Grid<std::uint8_t>& faded,
              const Grid<std::uint8_t>& quiet);

} // namespace hand
