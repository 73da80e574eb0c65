// Directions in space: x to the target, y to the left of it, z up. Right-positive angles therefore
// carry a minus sign in y.
#pragma once

#include "unit/quantity.hpp"

#include <cmath>

namespace ball {

struct Vector {
    double x = 0, y = 0, z = 0;

    friend constexpr Vector operator+(Vector a, Vector b) {
        return {a.x + b.x, a.y + b.y, a.z + b.z};
    }
    friend constexpr Vector operator-(Vector a, Vector b) {
        return {a.x - b.x, a.y - b.y, a.z - b.z};
    }
    friend constexpr Vector operator*(Vector a, double k) { return {a.x * k, a.y * k, a.z * k}; }
};

constexpr double dot(Vector a, Vector b) { return a.x * b.x + a.y * b.y + a.z * b.z; }

constexpr Vector cross(Vector a, Vector b) {
    return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

inline double length(Vector a) { return std::sqrt(dot(a, a)); }

/// The unit vector of that elevation, turned to the right of the target by `right`.
inline Vector direction(unit::Degrees right, unit::Degrees elevation) {
    const double r = unit::radians(right), e = unit::radians(elevation);
    return {std::cos(e) * std::cos(r), -std::cos(e) * std::sin(r), std::sin(e)};
}

/// How far to the right of the target a direction points; (-180, 180].
inline unit::Degrees right_of_target(Vector v) { return unit::degrees(std::atan2(-v.y, v.x)); }

/// How far above the horizontal a direction points; [-90, 90].
inline unit::Degrees elevation(Vector v) {
    return unit::degrees(std::atan2(v.z, std::hypot(v.x, v.y)));
}

} // namespace ball
