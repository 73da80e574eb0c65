// Cracks and masks turned into smooth lines and closed outlines, page millimetres (y down).
#pragma once

#include "hand/chains.hpp"
#include "hand/curve.hpp"

#include <functional>

namespace hand {

/// A line of the drawing before it is fitted.
struct Stroke {
    Polyline line;
    bool closed = false;                       ///< the first point is not repeated
    bool outline = false;                      ///< most of it borders on paper or handle
    bool free_start = false, free_end = false; ///< ends in the open
    bool handle_edge = false;                  ///< most of it is the handle's own edge
};

/// The handle's two straight edges on the page, known exactly.
struct Edges {
    bool known = false;
    Dot butt, along; ///< page; unit direction
    double radius = 0, taper = 0, length = 0, foreshortening = 1;

    /// Moves the points marked in `on` onto the nearer edge.
    void straighten(Polyline& line, const std::vector<std::uint8_t>& on) const;
};

std::vector<Stroke> strokes(Cracks& cracks, const Depth& depth, const Grid<Part>& part,
                            const Edges& edges);

/// Closed outlines of a mask, outer ones clockwise and holes counter-clockwise.
std::vector<Outline> loops(const Grid<std::uint8_t>& mask, const Depth& depth,
                           const Grid<Part>& part, const Edges& edges, double least_area,
                           double sigma = 1.55, double tolerance = .16);

} // namespace hand
