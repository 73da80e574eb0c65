#include "ball/impact.hpp"

#include "ball/vector.hpp"

#include <algorithm>

namespace ball {

namespace {

/// Face normal and club direction, and the ball's velocity along the face and square to it as
/// parts of the approach speed.
struct Contact {
    Vector normal, club;
    double cosine;       // of the spin loft
    double along_normal; // ball speed along the normal / approach speed along the normal
    double along_face;   // ball speed along the face / approach speed along the face
    double needed;       // friction with which it does not slide
};

Vector normal(const Delivery& d) { return direction(d.face, d.loft); }
Vector club_direction(const Delivery& d) { return direction(d.path, d.attack); }

Contact contact(const Delivery& d, const Head& head) {
    Contact c{normal(d), club_direction(d), 0, 0, 0, 0};
    c.cosine = std::max(dot(c.normal, c.club), 0.0);
    const double sine = length(cross(c.club, c.normal));
    const double ratio = ball_mass / head.mass;
    const double e = head.restitution.at(d.club_speed * c.cosine);
    c.along_normal = (1 + e) / (1 + ratio);
    c.along_face = (1 + head.tangential) / (1 + ratio + 1 / ball_inertia_factor);
    const double impulse = c.along_normal * c.cosine;
    c.needed = impulse > 0 ? c.along_face * sine / impulse : 0;
    if (c.needed > head.friction) c.along_face *= head.friction / c.needed;
    return c;
}

/// The ball's velocity for an approach speed of 1.
Vector velocity(const Contact& c) {
    return c.normal * ((c.along_normal - c.along_face) * c.cosine) + c.club * c.along_face;
}

double horizontal_share(const Contact& c) {
    const double toward_normal = (c.along_normal - c.along_face) * c.cosine;
    const double n = toward_normal * std::hypot(c.normal.x, c.normal.y);
    const double p = c.along_face * std::hypot(c.club.x, c.club.y);
    return n / (n + p);
}

} // namespace

Launch strike(const Delivery& d, const Head& head) {
    const Contact c = contact(d, head);
    const Vector v = velocity(c);
    const Vector axis = cross(c.club, c.normal);
    const double sine = length(axis);
    const double speed = d.club_speed.value;
    const double spin = speed * c.along_face * sine / (ball_inertia_factor * ball_radius.value);
    const double tilt = sine > 0 ? std::asin(std::clamp(-axis.z / sine, -1.0, 1.0)) : 0;
    Launch launch{{speed * length(v)},
                  elevation(v),
                  right_of_target(v),
                  {spin * 30 / std::numbers::pi},
                  unit::degrees(tilt)};
    if (head.face_share) launch.start = d.path + (d.face - d.path) * head.face_share->value;
    return launch;
}

unit::Degrees spin_loft(const Delivery& d) {
    const Vector n = normal(d), c = club_direction(d);
    return unit::degrees(std::atan2(length(cross(c, n)), dot(c, n)));
}

unit::Degrees axis_tilt(const Delivery& d) {
    const double open = unit::radians(d.face - d.path);
    const double loft = unit::radians(d.loft), attack = unit::radians(d.attack);
    const double across = std::cos(loft) * std::sin(open);
    const double up =
        std::sin(loft) * std::cos(attack) - std::cos(loft) * std::sin(attack) * std::cos(open);
    return unit::degrees(std::atan2(across, up));
}

double plane_share(const Delivery& d, const Head& head) {
    const Contact c = contact(d, head);
    const double sine = length(cross(c.club, c.normal));
    if (sine < 1e-9) return 1 - c.along_face / c.along_normal;
    const double from_normal = std::atan2(c.along_face * sine, c.along_normal * c.cosine);
    return 1 - from_normal / std::atan2(sine, c.cosine);
}

double horizontal_share(double plane, unit::Degrees spin_loft, unit::Degrees loft,
                        unit::Degrees attack) {
    const double angle = unit::radians(spin_loft);
    const double n = std::sin(plane * angle) * std::cos(unit::radians(loft));
    const double p = std::sin((1 - plane) * angle) * std::cos(unit::radians(attack));
    return n / (n + p);
}

double horizontal_share(const Delivery& d, const Head& head) {
    return head.face_share ? head.face_share->value : horizontal_share(contact(d, head));
}

double friction_needed(const Delivery& d, const Head& head) { return contact(d, head).needed; }

} // namespace ball
