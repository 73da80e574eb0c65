#include "hand/reading.hpp"

namespace hand {
namespace {

constexpr double eye_elevation = 72, cap_opening = 42, facing = .12;
constexpr int cap_points = 160;

/// Dorsal direction of a metacarpal head, leaned to its own side (transverse arch).
Vec cap_axis(const Limbs& l, int f) {
    const Vec m = unit_vector(l.knuckle[f] - l.body.ray[f].base);
    return unit_vector(rotated(square_to(ez, m), m, l.body.ray[f].cap_tilt * l.hold.closure));
}

/// Four points on their way out of the flesh and to the eye.
struct Points {
    Lanes x{}, y{}, z{};
};

/// Which of them nothing of the hand hides.
Picked free_way(const Scene& scene, Points p) {
    p.z += .8f;
    Picked open = all(-1), hidden = all(0);
    for (int i = 0; i < 34 && any(open); ++i) {
        const Lanes d = scene.flesh_distance(p.x, p.y, p.z);
        hidden |= open & (d < -.3f);
        open &= (d >= -.3f) & (d <= 60.f);
        p.z += most(most(d, -d), all(.8f)) * .95f;
    }
    return ~hidden;
}

/// Out of the flesh along a direction.
Points to_skin(const Scene& scene, Points p, const Points& direction) {
    for (int i = 0; i < 5; ++i) {
        const Lanes by = 1.1f * most(.25f - scene.flesh_distance(p.x, p.y, p.z), all(0.f));
        p = {p.x + direction.x * by, p.y + direction.y * by, p.z + direction.z * by};
    }
    return p;
}

/// The solids that stand near a point or before it as the eye sees it.
std::vector<Solid> around(const Scene& scene, Vec p, double reach) {
    std::vector<Solid> out;
    for (const Solid& s : scene.solids) {
        const double px = p.x - s.ax, py = p.y - s.ay;
        const double l = std::max(double(s.bx) * s.bx + double(s.by) * s.by, 1e-6);
        const double t = std::clamp((px * s.bx + py * s.by) / l, 0.0, 1.0);
        const double r = std::max(s.ra, s.ra + s.slope) + s.melt + reach;
        if (std::hypot(px - t * s.bx, py - t * s.by) < r) out.push_back(s);
    }
    return out;
}

Field alone(const Limbs& limbs, const Camera& camera, Field::Parts parts) {
    const Limbs* one[] = {&limbs};
    return {one, camera, parts};
}

} // namespace

Vec players_eye() {
    const double a = in_radians(eye_elevation);
    return {-std::cos(a), 0, std::sin(a)};
}

Camera players_camera() { return Camera::looking(players_eye(), ex); }

KnuckleView knuckle_view(const Limbs& l, const Field& seen, int f) {
    const Ray& ray = l.body.ray[f];
    const Camera& cam = seen.camera();
    const Vec axis = cap_axis(l, f), centre = l.knuckle[f] + Vec{0, 0, ray.cap_lift};
    const Vec e1 = unit_vector(cross(axis, {1, .1, 0})), e2 = cross(axis, e1);
    const double floor = std::cos(in_radians(cap_opening)),
                 golden = std::numbers::pi * (1 + std::sqrt(5.0));
    std::vector<Vec> facing_us;
    for (int k = 0; k < cap_points; ++k) {
        const double c = 1 - (1 - floor) * (k + .5) / cap_points, s = std::sqrt(1 - c * c);
        const double phi = golden * (k + .5);
        const Vec d = axis * c + (e1 * std::cos(phi) + e2 * std::sin(phi)) * s;
        if ((cam * l.direction(d)).z > facing) facing_us.push_back(d);
    }
    const std::vector<Solid> solids =
        around(seen.scene(), cam * l.to_grip(centre + axis * ray.cap), ray.cap + 4);
    const Scene scene{solids};
    int count = 0;
    Vec sum;
    for (std::size_t i = 0; i < facing_us.size(); i += lanes) {
        const std::size_t n = std::min<std::size_t>(lanes, facing_us.size() - i);
        Points at, way;
        for (std::size_t k = 0; k < lanes; ++k) {
            const Vec d = facing_us[i + std::min(k, n - 1)];
            const Vec p = cam * l.to_grip(centre + d * ray.cap), w = cam * l.direction(d);
            at.x[k] = float(p.x), at.y[k] = float(p.y), at.z[k] = float(p.z);
            way.x[k] = float(w.x), way.y[k] = float(w.y), way.z[k] = float(w.z);
        }
        const Picked free = free_way(scene, to_skin(scene, at, way));
        for (std::size_t k = 0; k < n; ++k) {
            if (!free[k]) continue;
            ++count;
            sum = sum + facing_us[i + k];
        }
    }
    return {double(count) / cap_points, count ? centre + sum * (ray.cap / count) : centre};
}

std::array<KnuckleView, fingers> knuckle_views(const Limbs& l, const Camera& camera) {
    const Field seen = alone(l, camera, Field::Parts::flesh);
    std::array<KnuckleView, fingers> out;
    for (int f = 0; f < fingers; ++f)
        out[f] = knuckle_view(l, seen, f);
    return out;
}

int knuckle_count(const std::array<KnuckleView, fingers>& views) {
    int n = 0;
    for (const KnuckleView& v : views)
        n += v.share >= knuckle_share;
    return n;
}

Crease v_crease(const Limbs& l) {
    const auto& i = l.finger[index_finger].joint;
    const Vec fork = lerp(lerp(l.thumb[1], l.thumb[2], .55), lerp(i[0], i[1], .25), .5);
    const Vec thumb = unit_vector(l.thumb[3] - l.thumb[1]);
    const Vec ray = unit_vector(i[0] - l.body.ray[index_finger].base);
    return {fork, fork - unit_vector(thumb + ray) * (42 * l.body.along)};
}

double v_degrees(const Limbs& l) {
    const Crease v = v_crease(l);
    const Camera cam = players_camera();
    const Vec d = cam * l.direction(v.end - v.fork), butt = cam * -ex;
    return in_degrees(std::atan2(d.x, -d.y) - std::atan2(butt.x, -butt.y));
}

// Directions on our picture that read as each point: a convention, set so that one knuckle goes
// with the chin, two with the trail eye, three with the trail shoulder and four with outside of it.
namespace {
constexpr std::array<double, 4> v_limits{-4, 3, 12, 23};
}

unit::VPoint v_point(double degrees) {
    int n = 0;
    for (const double limit : v_limits)
        n += degrees >= limit;
    return static_cast<unit::VPoint>(n);
}

double v_middle(unit::VPoint point) {
    constexpr std::array<double, 5> middle{-8, 0, 7.5, 17, 27};
    return middle[std::size_t(point)];
}

Vec flank(const Limbs& l, double station, double degrees) {
    const double a = in_radians(degrees), r = l.handle.radius_at(station);
    return l.handle.butt + l.handle.along * station +
           (l.grip.b * std::cos(a) + l.grip.c * std::sin(a)) * r;
}

ButtContact butt_contact(const Limbs& l) {
    constexpr double touch = 1.3;
    constexpr int step = 3;
    const Camera straight{{ex, ey, ez}};
    const Field hand = alone(l, straight, Field::Parts::flesh),
                pad = alone(l, straight, Field::Parts::deep);
    const double little = l.handle.station(l.knuckle[little_finger]);
    ButtContact out{1e9, 0, 0};
    int held = 0;
    for (int a = 0; a < 360; a += step) {
        const auto at = [&](double s) { return l.to_grip(flank(l, s, a)); };
        bool touched = false;
        for (double s = little - 16; s < little + 7 && !touched; s += 2) {
            touched = hand.distance(at(s)) < touch;
        }
        held += touched;
        const double gap = pad.distance(at(little - 12));
        if (gap < out.gap) out = {gap, double(a), 0};
    }
    out.gap = std::max(out.gap, 0.0);
    out.share = double(held) * step / 360;
    return out;
}

Contact phalanx_contact(const Limbs& l, int f) {
    constexpr std::array<const char*, fingers> names{"index", "middle", "ring", "little"};
    const auto& joint = l.finger[f].joint;
    const auto& r = l.body.ray[f].radius;
    const auto clear = [&](int j) {
        return clear_of(l.handle, joint[j], joint[j + 1], r[j], r[j + 1], 0, 41);
    };
    return {names[f], clear(0), clear(1), clear(2)};
}

double lay_degrees(const Limbs& l) {
    Vec sum;
    for (const PosedFinger& f : l.finger)
        sum = sum + Vec{f.bone[0].x, f.bone[0].y, 0};
    const Vec d = unit_vector(sum), u = unit_vector({l.handle.along.x, l.handle.along.y, 0});
    return in_degrees(std::acos(std::min(1.0, std::abs(dot(d, u)))));
}

} // namespace hand
