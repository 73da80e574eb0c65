// The innermost work of a drawing: some ten thousand rays a picture.
#include "hand/rays.hpp"

#include "hand/trace.hpp"

namespace hand {
namespace {

constexpr int most_steps = 64;
constexpr float touch = 0.03f, careful = 0.92f; ///< the distance is not exact: stay short of it
constexpr float grazing = 0.3f;                 ///< a ray that ran out of steps this close has hit
constexpr float stride = 1.2f; ///< near a surface a step may trust its slope as far as that
constexpr float shortest = .15f;
constexpr float swell = 4; ///< fillets raise the flesh by less
constexpr float nothing = 1e9f;

/// Where a ball of some radius, run along the solid's axis, is entered and left.
struct Span {
    Picked met;
    Lanes top, bottom;
};

Span span_of(const Culled& c, Lanes px, Lanes py, Lanes along, float radius) {
    const Solid& s = c.solid;
    const Lanes t = along * c.inverse_plane, r2 = all(radius * radius);
    const Lanes rho2 = r2 - most(px * px + py * py - along * t, all(0.f));
    const Lanes shift = root(most(rho2, all(0.f))) * c.lean;
    const auto room = [&](Lanes at) {
        const Lanes dx = px - at * s.bx, dy = py - at * s.by;
        return r2 - dx * dx - dy * dy;
    };
    const Lanes high = within(t + shift, 0, 1), low = within(t - shift, 0, 1);
    const Lanes above = room(high), below = room(low);
    return {(rho2 > 0.f) & ((above > 0.f) | (below > 0.f)),
            s.az + high * s.bz + root(most(above, all(0.f))),
            s.az + low * s.bz - root(most(below, all(0.f)))};
}

} // namespace

Culled::Culled(const Solid& s)
    : solid(s)
    , radius(s.slope > 0 ? s.ra + s.slope : s.ra) {
    const float plane = std::max(s.bx * s.bx + s.by * s.by, 1e-6f);
    inverse_plane = 1 / plane;
    lean = s.bz / std::sqrt((plane + s.bz * s.bz) * plane);
}

/// Only what the rays can meet or what can swell it.
Rays::Way Rays::gather(std::span<const Culled> solids, const Rod* rod, Lanes x, Lanes y) {
    Way way{all(behind), all(nothing)};
    const auto widen = [&](const Span& s) {
        way.start = s.met ? most(way.start, s.top) : way.start;
        way.end = s.met ? least(way.end, s.bottom) : way.end;
    };
    wide_.clear();
    for (const Culled& c : solids) {
        const Solid& s = c.solid;
        const Lanes px = x - s.ax, py = y - s.ay, along = px * s.bx + py * s.by;
        const Lanes t = within(along * c.inverse_plane, 0, 1);
        const Lanes dx = px - t * s.bx, dy = py - t * s.by;
        const float reach = c.radius + std::max(s.melt, 9.f);
        if (!any(dx * dx + dy * dy < reach * reach)) continue;
        const float melt = std::max(s.melt, 1e-3f);
        wide_.push_back({px, py, along, all(s.az), all(s.bx), all(s.by), all(s.bz), all(s.inverse),
                         all(s.ra), all(s.slope), all(melt), all(1 / melt), all(melt / 4), s.slot});
        widen(span_of(c, px, py, along, c.radius + swell));
    }
    rod_ = nullptr;
    if (!rod) return way;
    const Culled axis(Solid{rod->ox, rod->oy, rod->oz, rod->dx * rod->length, rod->dy * rod->length,
                            rod->dz * rod->length, 0, rod->radius, 0, 0, 0});
    const Lanes px = x - rod->ox, py = y - rod->oy;
    const Span s =
        span_of(axis, px, py, px * axis.solid.bx + py * axis.solid.by, rod->radius + .1f);
    if (!any(s.met)) return way;
    rod_ = rod;
    widen(s);
    return way;
}

Lanes Rays::rod_distance(Lanes x, Lanes y, Lanes z) const {
    constexpr float rim = 1.6f;
    const Rod& r = *rod_;
    const Lanes px = x - r.ox, py = y - r.oy, pz = z - r.oz;
    const Lanes t = px * r.dx + py * r.dy + pz * r.dz;
    const Lanes across = root(most(px * px + py * py + pz * pz - t * t, all(0.f)));
    const Lanes a = across - (r.radius - r.taper * within(t, 0, r.length)) + rim;
    const Lanes b = most(-t, t - r.length) + rim;
    const Lanes oa = most(a, all(0.f)), ob = most(b, all(0.f));
    return least(most(a, b), all(0.f)) + root(oa * oa + ob * ob) - rim;
}

Rays::Nearest Rays::near(Lanes x, Lanes y, Lanes z) const {
    Nearest best{all(nothing), all(-1)};
    Lanes bias{};
    for (std::size_t i = 0; i < wide_.size();) {
        const int slot = wide_[i].slot;
        Lanes d = all(nothing);
        for (; i < wide_.size() && wide_[i].slot == slot; ++i) {
            const Wide& s = wide_[i];
            Lanes pz = z - s.az;
            const Lanes t = within((s.along + pz * s.bz) * s.inverse, 0, 1);
            const Lanes px = s.px - t * s.bx, py = s.py - t * s.by;
            pz -= t * s.bz;
            const Lanes far = root(px * px + py * py + pz * pz) - (s.ra + s.slope * t);
            const Lanes h = most(s.melt - distance_between(d, far), all(0.f)) * s.inverse_melt;
            d = least(d, far) - h * h * s.quarter;
        }
        d -= slot_bias(slot);
        const Picked nearer = d < best.distance;
        best.distance = nearer ? d : best.distance;
        best.slot = nearer ? all(slot) : best.slot;
        bias = nearer ? all(slot_bias(slot)) : bias;
    }
    best.distance += bias;
    if (rod_) {
        const Lanes d = rod_distance(x, y, z);
        const Picked nearer = d < best.distance;
        best.distance = nearer ? d : best.distance;
        best.slot = nearer ? all(rod_slot) : best.slot;
    }
    return best;
}

/// Steps of the distance far from a surface; near it the slope of the last step says where it is,
/// and a step too far is taken back along the chord.
Hits Rays::cast(std::span<const Culled> solids, const Rod* rod, Lanes x, Lanes y) {
    Hits hits;
    const Way way = gather(solids, rod, x, y);
    Picked open = way.start > behind;
    hits.z = way.start;
    Lanes before{}, step{};
    for (int i = 0; i < most_steps && any(open); ++i) {
        const Nearest at = near(x, y, hits.z);
        const Lanes d = at.distance;
        const bool last = i + 1 == most_steps;
        const Picked inside = d <= -touch, entered = inside & (step > 0.f);
        const Picked hit = open & (d < (last ? grazing : touch)) & ~entered;
        hits.slot = hit ? at.slot : hits.slot;
        open &= ~hit;
        const Lanes closing = before - d;
        const Lanes chord = step * before / most(closing, all(1e-6f));
        const Lanes planned = least(step * d / most(closing, all(1e-6f)), all(stride));
        const Lanes plain = most(d * careful, all(shortest));
        const Lanes forward = closing > .05f * step ? most(d * careful, planned) : plain;
        const Lanes z = entered ? hits.z + step - chord : hits.z - forward;
        before = entered ? before : d;
        step = entered ? chord : forward;
        hits.z = open ? z : hits.z;
        open &= z > way.end;
    }
    add_normals(hits);
    if (rod_ && any(hits.slot == rod_slot)) add_rod_normals(hits, x, y);
    return hits;
}

void Rays::add_normals(Hits& hits) const {
    Lanes d = all(nothing), nx{}, ny{}, nz{};
    for (const Wide& s : wide_) {
        const Picked own = hits.slot == s.slot;
        if (!any(own)) continue;
        Lanes pz = hits.z - s.az;
        const Lanes t = within((s.along + pz * s.bz) * s.inverse, 0, 1);
        const Lanes px = s.px - t * s.bx, py = s.py - t * s.by;
        pz -= t * s.bz;
        const Lanes length = root(px * px + py * py + pz * pz);
        const Lanes far = length - (s.ra + s.slope * t);
        const Lanes h = most(s.melt - distance_between(d, far), all(0.f)) * s.inverse_melt;
        const Lanes w = far < d ? 1 - h * .5f : h * .5f; // share of the new capsule
        const Lanes k = w / most(length, all(1e-6f));
        nx = own ? nx * (1 - w) + px * k : nx;
        ny = own ? ny * (1 - w) + py * k : ny;
        nz = own ? nz * (1 - w) + pz * k : nz;
        d = own ? least(d, far) - h * h * s.quarter : d;
    }
    const Lanes k = 1 / most(root(nx * nx + ny * ny + nz * nz), all(1e-6f));
    hits.nx = nx * k;
    hits.ny = ny * k;
    hits.nz = nz * k;
}

void Rays::add_rod_normals(Hits& hits, Lanes x, Lanes y) const {
    constexpr float e = .1f;
    const auto difference = [&](float i, float j, float k) {
        return rod_distance(x + i, y + j, hits.z + k) - rod_distance(x - i, y - j, hits.z - k);
    };
    const Lanes nx = difference(e, 0, 0), ny = difference(0, e, 0), nz = difference(0, 0, e);
    const Lanes k = 1 / most(root(nx * nx + ny * ny + nz * nz), all(1e-6f));
    const Picked own = hits.slot == rod_slot;
    hits.nx = own ? nx * k : hits.nx;
    hits.ny = own ? ny * k : hits.ny;
    hits.nz = own ? nz * k : hits.nz;
}

} // namespace hand
