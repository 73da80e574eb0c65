// Cracks strung together to runs of corners.
#pragma once

#include "hand/cracks.hpp"

#include <vector>

namespace hand {

/// Corner numbers, row * width + column, in order; a closed run ends where it began.
using Run = std::vector<int>;

/// The four cracks that can meet at a corner, in a fixed order.
class Corners {
  public:
    explicit Corners(Cracks& cracks)
        : c_(cracks)
        , width_(cracks.width()) {}

    int width() const { return width_; }
    int count() const { return width_ * c_.height(); }
    /// The crack from a corner in direction 0 right, 1 down, 2 left, 3 up; nullptr off the grid.
    std::uint8_t* crack(int corner, int direction) const;
    int step(int corner, int direction) const;
    int degree(int corner) const;

  private:
    Cracks& c_;
    int width_;
};

/// Runs between junctions.
std::vector<Run> runs(Cracks& cracks);

/// Runs joined at every junction along the straightest pair, so that an outline runs on undisturbed
/// past the line that ends on it.
std::vector<Run> joined_runs(Cracks& cracks);

} // namespace hand
