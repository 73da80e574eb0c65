// Polylines of the picture: smoothing, length, cubic pieces.
#pragma once

#include "hand/picture.hpp"

#include <vector>

namespace hand {

using Polyline = std::vector<Dot>;

inline Dot operator+(Dot a, Dot b) { return {a.x + b.x, a.y + b.y}; }
inline Dot operator-(Dot a, Dot b) { return {a.x - b.x, a.y - b.y}; }
inline Dot operator*(Dot a, double k) { return {a.x * k, a.y * k}; }
inline Dot lerp(Dot a, Dot b, double t) { return a + (b - a) * t; }
inline double dot(Dot a, Dot b) { return a.x * b.x + a.y * b.y; }
double length(Dot d);
Dot unit_vector(Dot d);

/// Length along the line up to each point.
std::vector<double> arc_length(const Polyline& line);

/// Cuts the tips off cusps: where the way turns back within `reach` it goes straight across.
void blunt(Polyline& line, bool closed, double reach);

/// Gaussian along the line, `sigma` in points. Open ends stay where they are; a closed line is
/// given without repeating its first point.
Polyline smoothed(const Polyline& line, bool closed, double sigma);

/// The same line with points `step` apart.
Polyline resampled(const Polyline& line, double step);

/// Cubic pieces within `tolerance` of every point (Schneider, 1990: "An algorithm for automatically
/// fitting digitized curves"). A closed line is given without repeating its first point.
Outline fitted(const Polyline& line, double tolerance, bool closed);

/// Straight pieces from corner to corner.
Outline polygon(const Polyline& corners, bool closed);

/// Points on the pieces, ends included.
Polyline flattened(const Outline& outline, int points_a_piece = 16);

/// Signed area of a closed line, positive when it runs clockwise on the page (y down).
double area(const Polyline& line);

} // namespace hand
