#include "hand/solve.hpp"

#include "hand/field.hpp"

namespace hand {
namespace {

/// Angle of the back of the hand above the target direction at turn 0: two knuckles show there.
constexpr double turn_zero = 19;
constexpr std::array<double, 3> relaxed{8, 12, 8};

std::array<Vec, fingers> cupped(const Anatomy& body, double closure) {
    std::array<Vec, fingers> k;
    for (int f = 0; f < fingers; ++f)
        k[f] = body.ray[f].knuckle + body.ray[f].cup * closure;
    return k;
}

/// The hand turned about the handle: the back of the hand, made square to the handle, stands at
/// turn_zero + turn above the target direction.
Rows grip_frame(Vec u, double turn) {
    const Vec up = square_to(ez, u), side = cross(u, up);
    const double phi = in_radians(turn_zero + turn), c = std::cos(phi), s = std::sin(phi);
    return {u, up * c - side * s, up * s + side * c};
}

/// Where each middle joint should stand along the handle so that the fingers lie side by side.
std::array<double, fingers> gathered(const Limbs& l) {
    std::array<double, fingers> want{}, shift{};
    double sum = 0, mean = 0;
    for (int f = 0; f < fingers; ++f) {
        const double r = l.body.ray[f].radius[1] * .985;
        want[f] = -(sum += f ? r + l.body.ray[f - 1].radius[1] * .985 : 0);
        mean += (l.handle.station(l.knuckle[f]) - want[f]) / fingers;
    }
    for (int f = 0; f < fingers; ++f)
        shift[f] = mean + want[f] - l.handle.station(l.knuckle[f]);
    return shift;
}

/// Flexion axis and direction of a closing finger; `sideways` moves its middle joint along the
/// handle.
Curl closing_curl(const Limbs& l, int f, double sideways) {
    Vec axis = unit_vector(lerp(ex, l.handle.along, mix(.9, .45, l.hold.lay)));
    Vec out = square_to(ey, axis);
    out = unit_vector(out + axis * (sideways / l.body.ray[f].phalanx[0]));
    return {l.knuckle[f], square_to(axis, out), out};
}

constexpr double drawn_aside = 30; ///< degrees

PosedFinger posed(const Limbs& l, int f, double sideways, const Obstacle& obstacle) {
    const Ray& ray = l.body.ray[f];
    const bool hangs = l.hold.fingers_late || (l.hold.only_index && f != index_finger);
    // fingers that hang free are drawn towards the little one, clear of the forefinger
    const double fan =
        -ray.fan * l.hold.spread + l.hold.lean + (hangs && l.hold.only_index ? drawn_aside : 0);
    const Curl closed = closing_curl(l, f, sideways);
    const Clearance clear = [&](Vec p, double ball) {
        const double own = l.handle.clear(p, ball);
        return obstacle.clear && obstacle.minded[f]
                   ? std::min(own, obstacle.clear(l.grip * (p - l.handle.butt), ball))
                   : own;
    };
    const double c = l.hold.closure * (hangs ? .10 : 1);
    std::array<double, 3> angle = c > 0 ? close_finger(ray, closed, clear) : relaxed;
    Curl curl = closed;
    curl.axis = unit_vector(lerp(rotated(ex, ez, fan), closed.axis, c));
    curl.out = square_to(lerp(rotated(ey, ez, fan), closed.out, c), curl.axis);
    for (int j = 0; j < 3; ++j)
        angle[j] = mix(relaxed[j], angle[j], c);
    return bent(ray, curl, angle);
}

Limbs placed(const Anatomy& body, const Hold& hold, std::array<double, 2> off) {
    Limbs l;
    l.body = body;
    l.hold = hold;
    l.knuckle = cupped(body, hold.closure);
    const AxisPoints axis = place_handle(body, hold, l.knuckle, off);
    const Vec u = unit_vector(axis.index - axis.little);
    l.handle = {axis.little - u * hold.stick_out, u, body.handle_radius, body.handle_taper};
    l.origin = l.handle.butt;
    l.grip = grip_frame(u, hold.turn);
    return l;
}

/// Everything but the fingers: enough to measure how deep the palm is pressed.
Limbs palm_on(const Anatomy& body, const Hold& hold, std::array<double, 2> off) {
    Limbs l = placed(body, hold, off);
    for (int f = 0; f < fingers; ++f) {
        l.finger[f] = bent(l.body.ray[f], closing_curl(l, f, 0), relaxed);
    }
    place_thumb(l);
    place_forearm(l);
    return l;
}

/// Deepest flesh of the palm on the handle's flank: index half, little half.
std::array<double, 2> pressure(const Limbs& l) {
    constexpr int turn = 9, arcs = 360 / turn / lanes;
    constexpr float pitch = 3,
                    steepest = 1.03f; ///< millimetres; growth of the distance with the way
    const Limbs* one[] = {&l};
    const Field palm(one, {{ex, ey, ez}}, Field::Parts::deep);
    const Scene scene = palm.scene();
    const float half = float(
        (l.handle.station(l.knuckle[index_finger]) + l.handle.station(l.knuckle[little_finger])) /
        2);
    std::array<float, 2> deepest{1e9f, 1e9f};
    std::array<float, arcs> bound; // no flesh of that arc can be deeper
    bound.fill(-1e9f);
    for (float s = 4; s < 120; s += pitch) {
        float& d = deepest[s > half ? 0 : 1];
        const float r = float(l.handle.radius_at(s));
        for (int arc = 0; arc < arcs; ++arc) {
            if ((bound[arc] -= pitch * steepest) > d) continue;
            Lanes y, z;
            for (int k = 0; k < lanes; ++k) {
                const double t = in_radians((arc * lanes + k) * turn);
                y[k] = r * float(std::cos(t));
                z[k] = r * float(std::sin(t));
            }
            const Lanes here = scene.flesh_distance(all(s), y, z);
            bound[arc] = std::min({here[0], here[1], here[2], here[3]});
            d = std::min(d, bound[arc]);
        }
    }
    return {deepest[0], deepest[1]};
}

/// The handle is moved along the palm's normal, separately at both ends, until the blended flesh
/// takes it 1 mm deep. Converges in two or three rounds.
std::array<double, 2> pressed_in(const Anatomy& body, const Hold& hold) {
    std::array<double, 2> off{};
    Hold plain = hold;
    plain.lift = 0;
    for (int round = 0; round < 4; ++round) {
        const auto [index, little] = pressure(palm_on(body, plain, off));
        const double di = index < -1 ? std::min(index + 1, 3.0) : 0;
        const bool loose = hold.gap > 0;
        const double dl = little < -1 || (!loose && std::abs(little + 1) < 4) ? little + 1 : 0;
        if (std::abs(di) < .15 && std::abs(dl) < .15) break;
        off[0] += di;
        off[1] += dl;
    }
    return off;
}

} // namespace

Limbs solve(const Anatomy& body, const Hold& hold, const Obstacle& obstacle) {
    const std::array<double, 2> off = hold.open ? std::array<double, 2>{} : pressed_in(body, hold);
    Limbs l = placed(body, hold, off);
    auto sideways = gathered(l);
    sideways[index_finger] += hold.index_aside;
    sideways[little_finger] += hold.little_aside;
    for (int f = 0; f < fingers; ++f)
        l.finger[f] = posed(l, f, sideways[f], obstacle);
    place_thumb(l);
    place_forearm(l);
    return l;
}

Limbs solve(const Anatomy& body, const Hold& hold) { return solve(body, hold, {}); }

} // namespace hand
