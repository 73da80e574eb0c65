// Whether the level club rests on the bent forefinger under the heel pad.
#include "hand/reading.hpp"

namespace hand {
namespace {

// An iron of 0.41 kg whose centre of mass lies 0.72 m from the butt (common practice, no source).
constexpr double weight = .41 * 9.81, centre = 720;
constexpr double touch = 1.3;      ///< flesh nearer than this bears, millimetres
constexpr double grip_angle = 42;  ///< off the vertical at which skin on rubber still bears (friction 0.9)
constexpr double pad_limit = 60;   ///< newtons a relaxed pad gives (from memory)

struct Bearing {
    bool any = false;
    double station = 0;
};

} // namespace

Vec crook_direction(const Limbs& l) {
    const PosedFinger& f = l.finger[index_finger];
    const Vec middle = lerp(f.joint[1], f.joint[2], .5);
    return square_to(middle - l.handle.butt, l.handle.along);
}

Balance balance(const Limbs& l, Vec down) {
    const Camera straight{{ex, ey, ez}};
    const Limbs* one[] = {&l};
    const Field palm(one, straight, Field::Parts::deep);
    const Ray& ray = l.body.ray[index_finger];
    const auto& joint = l.finger[index_finger].joint;
    const Vec below = square_to(down, l.handle.along);
    const double bears = std::cos(in_radians(grip_angle));
    // The forefinger: does a phalanx touch the handle from below?
    Bearing finger;
    for (int j = 0; j < 3; ++j) {
        for (int i = 0; i <= 20; ++i) {
            const Vec p = lerp(joint[j], joint[j + 1], i / 20.0);
            const double r = mix(ray.radius[j], ray.radius[j + 1], i / 20.0);
            const double s = l.handle.station(p);
            const Vec out = square_to(p - l.handle.butt, l.handle.along);
            if (l.handle.clear(p, r) > touch || dot(out, below) < bears) continue;
            finger = {true, std::max(finger.station, s)};
        }
    }
    // The pad: flesh above the handle behind the forefinger, as near the butt as it goes.
    Bearing pad;
    for (double s = 2; finger.any && s < finger.station - 12 && !pad.any; s += 2) {
        for (int a = 0; a < 360; a += 6) {
            const Vec p = flank(l, s, a);
            const Vec out = square_to(p - l.handle.butt, l.handle.along);
            if (dot(out, below) > -bears || palm.distance(l.to_grip(p)) > touch) continue;
            pad = {true, s};
        }
    }
    Balance b{false, finger.station, pad.station, 0};
    if (!finger.any || !pad.any) return b;
    b.pad_force = weight * (centre - finger.station) / (finger.station - pad.station);
    b.rests = b.pad_force <= pad_limit;
    return b;
}

} // namespace hand
