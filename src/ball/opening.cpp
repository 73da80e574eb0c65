#include "ball/opening.hpp"

#include "ball/vector.hpp"

#include <algorithm>

namespace ball {

namespace {

struct Frame {
    Vector shaft;  // from the head to the hands
    Vector normal; // of the face, before the turn
};

/// Lean turns the whole club about the line square to the target line.
Frame frame(const Soled& club) {
    const double lie = unit::radians(club.lie), lean = unit::radians(club.lean);
    return {{std::sin(lie) * std::sin(lean), std::cos(lie), std::sin(lie) * std::cos(lean)},
            direction({0}, club.loft - club.lean)};
}

/// Rodrigues' rotation of the normal by -turn about the shaft.
Vector turned(const Frame& f, double turn) {
    const double c = std::cos(turn), s = std::sin(turn);
    return f.normal * c - cross(f.shaft, f.normal) * s +
           f.shaft * (dot(f.shaft, f.normal) * (1 - c));
}

} // namespace

Opened turned(const Soled& club, unit::Degrees turn) {
    const Vector n = turned(frame(club), unit::radians(turn));
    return {right_of_target(n), elevation(n)};
}

unit::Degrees turn_for(const Soled& club, unit::Degrees face) {
    // The turned normal lies in the upright plane through `face`: square to m. With the rotation
    // written out that is p cos(turn) + q sin(turn) + c = 0.
    const Frame f = frame(club);
    const double a = unit::radians(face);
    const Vector m{std::sin(a), std::cos(a), 0};
    const double c = dot(f.shaft, f.normal) * dot(f.shaft, m);
    const double p = dot(f.normal, m) - c;
    const double q = -dot(cross(f.shaft, f.normal), m);
    const double middle = std::atan2(q, p);
    const double half = std::acos(std::clamp(-c / std::hypot(p, q), -1.0, 1.0));
    const double one = std::remainder(middle + half, 2 * std::numbers::pi);
    const double other = std::remainder(middle - half, 2 * std::numbers::pi);
    return unit::degrees(std::abs(one) < std::abs(other) ? one : other);
}

unit::Degrees loft_added(const Soled& club, unit::Degrees face) {
    return turned(club, turn_for(club, face)).loft - (club.loft - club.lean);
}

} // namespace ball
