// Points and directions of the model, millimetres.
#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace hand {

struct Vec {
    double x = 0, y = 0, z = 0;
    friend constexpr Vec operator+(Vec a, Vec b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
    friend constexpr Vec operator-(Vec a, Vec b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
    friend constexpr Vec operator-(Vec a) { return {-a.x, -a.y, -a.z}; }
    friend constexpr Vec operator*(Vec a, double k) { return {a.x * k, a.y * k, a.z * k}; }
    friend constexpr Vec operator*(double k, Vec a) { return a * k; }
    friend constexpr bool operator==(Vec, Vec) = default;
};

constexpr double dot(Vec a, Vec b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
constexpr Vec cross(Vec a, Vec b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}
inline double length(Vec v) { return std::sqrt(dot(v, v)); }
inline Vec unit_vector(Vec v) {
    const double l = length(v);
    return l > 1e-12 ? v * (1 / l) : v;
}
constexpr Vec lerp(Vec a, Vec b, double t) { return a + (b - a) * t; }
constexpr double mix(double a, double b, double t) { return a + (b - a) * t; }
inline double in_radians(double degrees) { return degrees * std::numbers::pi / 180; }
inline double in_degrees(double radians) { return radians * 180 / std::numbers::pi; }

/// The part of `v` that stands at right angles to the unit vector `axis`, unit length.
inline Vec square_to(Vec v, Vec axis) { return unit_vector(v - axis * dot(v, axis)); }

/// Rotation about an axis, degrees, right-handed; a zero axis turns nothing.
inline Vec rotated(Vec v, Vec axis, double degrees) {
    if (length(axis) < 1e-9) return v;
    const Vec k = unit_vector(axis);
    const double a = in_radians(degrees), c = std::cos(a), s = std::sin(a);
    return v * c + cross(k, v) * s + k * (dot(k, v) * (1 - c));
}

/// Three rows; times a vector gives its coordinates along them.
struct Rows {
    Vec a, b, c;
    constexpr Vec operator*(Vec v) const { return {dot(a, v), dot(b, v), dot(c, v)}; }
    /// Back again (the rows are an orthonormal frame).
    constexpr Vec back(Vec v) const { return a * v.x + b * v.y + c * v.z; }
};

inline constexpr Vec ex{1, 0, 0}, ey{0, 1, 0}, ez{0, 0, 1};

} // namespace hand
