// Where the handle runs in the hand, and which way the forearm leaves it.
#include "hand/solve.hpp"

namespace hand {
namespace {

constexpr double index_station = 33,
                 index_bend = 38; ///< finger-held: 33 mm out, knuckle bent 38 degrees

struct Cone {
    Vec a, b;
    double ra, rb;
    double depth(Vec p) const {
        const Vec ba = b - a;
        const double t = std::clamp(dot(p - a, ba) / dot(ba, ba), 0.0, 1.0);
        return length(p - a - ba * t) - (ra + (rb - ra) * t);
    }
};

AxisPoints laid_across(const Anatomy& body, const Hold& hold) {
    Vec sum;
    for (int f = 0; f < fingers; ++f) {
        sum = sum + rotated(ey, ez, -body.ray[f].fan * hold.spread + hold.lean);
    }
    const Vec u = rotated(unit_vector(sum), ez, -(90 - hold.slant));
    const Vec c = lerp(body.at(2, 108, -27), body.at(2, 80, -25), hold.lay);
    return {c + u * body.wide(30), c - u * body.wide(34)};
}

Vec in_fingers(const Anatomy& body, const std::array<Vec, fingers>& knuckle, double handle) {
    const Ray& index = body.ray[index_finger];
    const Vec d = rotated(rotated(ey, ez, -index.fan * .5), ex, -index_bend);
    const Vec normal = rotated(-ez, ex, -index_bend);
    const double s = index_station * body.along;
    const double r = mix(index.radius[0], index.radius[1], s / index.phalanx[0]);
    return knuckle[index_finger] + d * s + normal * (r + handle - 0.6);
}

} // namespace

AxisPoints place_handle(const Anatomy& body, const Hold& hold,
                        const std::array<Vec, fingers>& knuckle, std::array<double, 2> off) {
    if (hold.open) return laid_across(body, hold);
    const auto metacarpal = [&](Finger f, double tip) {
        return Cone{body.ray[f].base, knuckle[f] + body.at(0, -1, -1.2), body.wide(13),
                    body.wide(tip)};
    };
    const std::array<Cone, 3> palm{
        Cone{body.at(-15, 14, -10), body.at(-31, 60, -13), body.wide(14.5), body.wide(11.5)},
        metacarpal(little_finger, 10.6), metacarpal(index_finger, 12.2)};
    // From far below the palm, up until 0.8 mm into the flesh.
    const auto pressed = [&](Vec p, double r) {
        const auto clear = [&] {
            double d = 1e9;
            for (const Cone& c : palm)
                d = std::min(d, c.depth(p));
            return d - r;
        };
        for (int i = 0; i < 600 && clear() > -0.8; ++i)
            p.z += 0.25;
        return p;
    };
    const double near = body.handle_radius - 70 * body.handle_taper;
    const double far = body.handle_radius - 24 * body.handle_taper;
    const double back = mix(-20, -36, std::max(hold.lay, 1 - hold.heel));
    Vec pi = lerp(in_fingers(body, knuckle, near),
                  pressed(knuckle[index_finger] + body.at(-2, -9, -60), near), hold.lay);
    // Beside the pad the butt leaves over the hollow of the palm.
    const double inwards = 14 * (1 - hold.heel);
    Vec pl = pressed(knuckle[little_finger] + body.at(inwards - 2, back - .4 * inwards, -60), far);
    pi.z += off[0] - hold.lift;
    pl.z += off[1] - hold.lift - hold.gap;
    return {pi, pl};
}

void place_forearm(Limbs& l) {
    constexpr double most = 52;
    const Vec straight = -ey;
    const Vec wish = l.hold.forearm;
    const Vec f = length(wish) > 0 ? unit_vector(l.grip.back(wish)) : straight;
    const double angle = in_degrees(std::acos(std::clamp(-f.y, -1.0, 1.0)));
    const double bend = std::min(angle * l.hold.bend_share, most);
    const Vec about = cross(straight, f);
    l.carpus = rotated(straight, about, bend * .5);
    l.arm = rotated(straight, about, bend);
    l.wrist = l.carpus * (26 * l.body.along);
}

} // namespace hand
