// Small image operations on masks.
#pragma once

#include "hand/trace.hpp"

#include <cstdint>

namespace hand {

/// Grown and shrunk by `n` pixels to every side; the picture's edge shrinks nothing.
Grid<std::uint8_t> dilated(const Grid<std::uint8_t>& mask, int n);
Grid<std::uint8_t> eroded(const Grid<std::uint8_t>& mask, int n);

/// Without holes of the mask in `within` smaller than `hole` pixels, and without its own islands
/// smaller than `island`.
void calm(Grid<std::uint8_t>& mask, const Grid<std::uint8_t>& within, int island, int hole);

/// Gaussian mean over the masked pixels only (three box passes), row by row and column by column.
Grid<float> mean_within(const Grid<float>& value, const Grid<std::uint8_t>& mask, double sigma);

template <class F>
Grid<float> blurred(const Depth& d, const Grid<std::uint8_t>& mask, F&& value, double sigma) {
    Grid<float> v(d.id.width, d.id.height, 0);
    for (std::size_t i = 0; i < v.size(); ++i) {
        if (mask.cell[i]) v.cell[i] = float(value(i));
    }
    return mean_within(v, mask, sigma);
}

} // namespace hand
