// Orthographic depth picture of a field.
#pragma once

#include "hand/field.hpp"
#include "hand/grid.hpp"

namespace hand {

/// Part of the camera plane, millimetres; its top left corner is the picture's 0,0.
struct Window {
    double left = 0, top = 0, width = 0, height = 0;
};

struct Depth {
    Window window;
    double pixel = 0.3;     ///< size, millimetres
    Grid<float> z;          ///< nearest surface, far behind where there is none
    Grid<float> nx, ny, nz; ///< outward normal there, camera coordinates
    Grid<signed char> id;   ///< Surface, -1 paper

    double x(double column) const { return window.left + (column + .5) * pixel; }
    double y(double row) const { return window.top - (row + .5) * pixel; }
    Vec point(int row, int column) const { return {x(column), y(row), z(row, column)}; }
};

inline constexpr float behind = -1000; ///< depth of the paper

Depth trace(const Field& field, const Window& window, double pixel);

} // namespace hand
