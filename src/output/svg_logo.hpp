// SVG files painted as lines and curves.
#pragma once

#include "ink/geometry.hpp"
#include "output/cairo_handle.hpp"

#include <string>

namespace output {

/// Paints an SVG file into `box`. librsvg is loaded when the first one is painted: it costs every
/// start of the program 3 ms otherwise, and most sheets bear no logo. Throws CannotDraw.
void draw_svg(cairo_t* context, const ink::Rect& box, const std::string& bytes);

/// Width and height in its own units. Throws CannotDraw.
ink::Size svg_size(const std::string& bytes);

} // namespace output
