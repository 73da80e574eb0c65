// Whether the level club rests on the bent forefinger under the heel pad.
#include "hand/reading.hpp"

#include <vector>

namespace hand {
namespace {

// An iron of 0.41 kg whose centre of mass lies 0.72 m from the butt (common practice, no source).
constexpr double weight = .41 * 9.81, centre = 720;
constexpr double touch = 1.3; ///< flesh nearer than this bears, millimetres
constexpr double grip_angle =
    42; ///< off the vertical at which skin on rubber still bears (friction 0.9)
constexpr double pad_limit = 60; ///< newtons a relaxed pad gives (from memory)
constexpr double finger_limit =
    .8; ///< newton metres a loosely bent middle joint holds (from memory)

/// Where flesh bears on the handle: angle round it, station along it.
struct Bearing {
    double angle = 0, station = 0;
    double arm = 0; ///< from the forefinger's middle joint, metres
};

double round_the_handle(const Limbs& l, Vec p) {
    const Vec out = l.grip * square_to(p - l.handle.butt, l.handle.along);
    return in_degrees(std::atan2(out.z, out.y));
}

std::vector<Bearing> forefinger(const Limbs& l) {
    const Ray& ray = l.body.ray[index_finger];
    const auto& joint = l.finger[index_finger].joint;
    std::vector<Bearing> out;
    for (int j = 0; j < 3; ++j) {
        for (int i = 0; i <= 20; ++i) {
            const Vec p = lerp(joint[j], joint[j + 1], i / 20.0);
            if (l.handle.clear(p, mix(ray.radius[j], ray.radius[j + 1], i / 20.0)) > touch)
                continue;
            out.push_back(
                {round_the_handle(l, p), l.handle.station(p), length(p - joint[1]) / 1000});
        }
    }
    return out;
}

/// Flesh of the palm behind a station; the butt end first.
std::vector<Bearing> heel_pad(const Limbs& l, double before) {
    const Limbs* one[] = {&l};
    const Field palm(one, {{ex, ey, ez}}, Field::Parts::deep);
    std::vector<Bearing> out;
    for (double s = 2; s < before; s += 4) {
        for (int a = -180; a < 180; a += 6) {
            if (palm.distance(l.to_grip(flank(l, s, a))) < touch) out.push_back({double(a), s, 0});
        }
    }
    return out;
}

bool within(double a, double b, double limit) {
    return std::abs(std::remainder(a - b, 360.0)) <= limit;
}

/// One finger bearing from below and one pad bearing from above, for that direction of the ground.
Balance carried(const Bearing& finger, const std::vector<Bearing>& pad, double down) {
    Balance b{false, finger.station, 0, 0};
    for (const Bearing& p : pad) {
        if (!within(p.angle, down + 180, grip_angle)) continue;
        b.pad_station = p.station;
        b.pad_force = weight * (centre - finger.station) / (finger.station - p.station);
        const double moment = (weight + b.pad_force) * finger.arm;
        b.rests = b.pad_force <= pad_limit && moment <= finger_limit;
        return b; // nearest the butt: the longest arm
    }
    return b;
}

} // namespace

/// The player may roll the hand until the club lies best: any direction of the ground will do.
Balance balance(const Limbs& l) {
    const std::vector<Bearing> fingers_below = forefinger(l);
    Balance best{false, l.handle.station(l.finger[index_finger].joint[1]), 0, 0, -120};
    if (fingers_below.empty()) return best;
    best.finger_station = fingers_below.front().station;
    const std::vector<Bearing> pad = heel_pad(l, best.finger_station - 25);
    double least = 1e9;
    for (int down = -180; down < 180; down += 6) {
        for (const Bearing& f : fingers_below) {
            if (!within(f.angle, down, grip_angle)) continue;
            Balance b = carried(f, pad, down);
            b.down = down;
            const double off = std::abs(std::remainder(f.angle - down, 360.0));
            if (b.rests && b.pad_force * f.arm + off * 1e-3 < least) {
                least = b.pad_force * f.arm + off * 1e-3;
                best = b;
            }
        }
    }
    return best;
}

} // namespace hand
