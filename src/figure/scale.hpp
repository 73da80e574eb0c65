// Values to places along an axis, and ticks a person would choose.
#pragma once

#include <span>
#include <vector>

namespace figure {

struct Scale {
    double least = 0, most = 1; ///< values at the ends
    double from = 0, to = 1;    ///< places of the ends, points

    double operator()(double value) const {
        return from + (value - least) / (most - least) * (to - from);
    }
    bool holds(double value) const { return value >= least && value <= most; }
};

/// A step of 1, 2, 2.5 or 5 times a power of ten that gives at most `most_ticks` ticks over
/// `range`.
double pleasant_step(double range, int most_ticks);

/// Multiples of `step` inside [least, most], never "-0".
std::vector<double> ticks(double least, double most, double step);

/// Widened to whole steps, with at least `margin` (a part of the range) on both sides of the
/// values.
Scale fitted(std::span<const double> values, double from, double to, int most_ticks,
             double margin = 0.04);

/// As `fitted`, with zero in the middle: for values that mean left and right.
Scale centred(std::span<const double> values, double from, double to, double at_least);

} // namespace figure
