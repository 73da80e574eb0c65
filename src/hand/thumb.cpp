#include "hand/solve.hpp"

namespace hand {
namespace {

/// Bones of a thumb that does not hold: sideways and lengthwise parts, heights from the hold.
void stretch(Limbs& l, double end) {
    const Vec up = l.hold.free_thumb;
    const std::array<Vec, 3> closed{Vec{.72, .62, up.x}, {.52, .84, up.y}, {.42, .9, up.z}};
    const std::array<Vec, 3> flat{Vec{.80, .50, -.10}, {.70, .70, .02}, {.62, .78, .10}};
    const auto& way = l.hold.open ? flat : closed;
    const std::array<double, 3> bone{l.body.thumb[0], l.body.thumb[1], end};
    l.thumb[0] = l.body.saddle;
    for (int j = 0; j < 3; ++j)
        l.thumb[j + 1] = l.thumb[j] + unit_vector(way[j]) * bone[j];
}

} // namespace

/// Pad on the handle at a clock position, end phalanx slightly raised, two bones back to the
/// saddle.
void place_thumb(Limbs& l) {
    const Vec u = l.grip.a, t = l.grip.b, n = l.grip.c;
    // A short thumb is drawn back in its saddle joint, a long one comes out.
    const double back = 10 * (1 - 2 * l.hold.reach) * l.body.along;
    const Vec saddle = l.body.saddle - u * std::max(back, 0.0);
    // A stronger hand takes its thumb a little further round.
    const double clock = l.hold.clock + std::max(l.hold.turn, 0.0) / 60;
    const double a = in_radians((clock - 12) * 30), tip_radius = l.body.thumb_radius[3];
    l.thumb_up = n * std::cos(a) - t * std::sin(a);
    const double end = l.body.thumb[2] - tip_radius;
    if (l.hold.thumb_free) return stretch(l, end);
    const double farthest = 144 * l.body.across; // the pictures break the handle off beyond it
    const double wish =
        l.handle.station(l.knuckle[index_finger]) + mix(20, 56, l.hold.reach) * l.body.along;
    const double s = std::min(wish, farthest);
    Vec tip = l.handle.butt + u * s + l.thumb_up * (l.handle.radius_at(s) + tip_radius - .8);
    Vec joint = tip + unit_vector(lerp(-u, unit_vector(saddle - tip), .25)) * end;
    const double l0 = l.body.thumb[0], l1 = l.body.thumb[1];
    for (int i = 0; i < 200 && length(joint - saddle) > l0 + l1 - 0.5; ++i) {
        tip = tip - u; // out of reach: the thumb slides back
        joint = joint - u;
    }
    // Drawn up too far a thumb would stand off the handle like an elbow.
    constexpr double least_stretched = .94;
    for (double at = s; length(joint - saddle) < least_stretched * (l0 + l1) && at < farthest;
         ++at) {
        tip = tip + u;
        joint = joint + u;
    }
    const Vec e = unit_vector(joint - saddle);
    const double d = length(joint - saddle), x = (d * d + l0 * l0 - l1 * l1) / (2 * d);
    const Vec pole = square_to(n * .55 - t, e); // its middle joint bulges to the trail side
    l.thumb = {saddle, saddle + e * x + pole * std::sqrt(std::max(l0 * l0 - x * x, 0.0)), joint,
               tip};
}

} // namespace hand
