#include "hand/field.hpp"

namespace hand {
namespace {

inline float least(float a, float b) { return a < b ? a : b; }
inline float most(float a, float b) { return a > b ? a : b; }

struct Foot {
    float px, py, pz, length, distance;
};

inline Foot foot(const Solid& s, float x, float y, float z) {
    float px = x - s.ax, py = y - s.ay, pz = z - s.az;
    const float t = least(most((px * s.bx + py * s.by + pz * s.bz) * s.inverse, 0), 1);
    px -= t * s.bx;
    py -= t * s.by;
    pz -= t * s.bz;
    const float l = __builtin_sqrtf(px * px + py * py + pz * pz);
    return {px, py, pz, l, l - (s.ra + s.slope * t)};
}

/// Polynomial smooth minimum.
inline float melted(float a, float b, float k) {
    const float h = most(k - (a > b ? a - b : b - a), 0) / k;
    return least(a, b) - h * h * (k * .25f);
}

struct Slope {
    float d = 1e9f, x = 0, y = 0, z = 0;
};

void melt_into(Slope& acc, const Foot& f, float k) {
    const float away = acc.d - f.distance, h = most(k - (away > 0 ? away : -away), 0) / k;
    const float w = f.distance < acc.d ? 1 - h * .5f : h * .5f; // share of the new capsule
    const float i = w / most(f.length, 1e-6f);
    acc.x = acc.x * (1 - w) + f.px * i;
    acc.y = acc.y * (1 - w) + f.py * i;
    acc.z = acc.z * (1 - w) + f.pz * i;
    acc.d = least(acc.d, f.distance) - h * h * (k * .25f);
}

Solid solid(const Capsule& c, const Limbs& l, const Camera& cam, int hand) {
    const Vec a = cam * l.to_grip(c.a), b = cam * l.to_grip(c.b), ba = b - a;
    return {float(a.x),
            float(a.y),
            float(a.z),
            float(ba.x),
            float(ba.y),
            float(ba.z),
            float(1 / std::max(dot(ba, ba), 1e-6)),
            float(c.ra),
            float(c.rb - c.ra),
            float(c.melt),
            c.surface + hand * hand_slots};
}

} // namespace

Camera Camera::looking(Vec eye, Vec up) {
    const Vec e = unit_vector(eye), v = square_to(up, e);
    return {{cross(v, e), v, e}};
}

float Solid::clear_of(float x, float y, float z) const { return foot(*this, x, y, z).distance; }

float Rod::distance(float x, float y, float z) const {
    constexpr float rim = 1.6f;
    const float px = x - ox, py = y - oy, pz = z - oz, t = px * dx + py * dy + pz * dz;
    const float across = __builtin_sqrtf(most(px * px + py * py + pz * pz - t * t, 0));
    const float a = across - (radius - taper * least(most(t, 0), length)) + rim;
    const float b = most(-t, t - length) + rim;
    const float oa = most(a, 0), ob = most(b, 0);
    return least(most(a, b), 0) + __builtin_sqrtf(oa * oa + ob * ob) - rim;
}

Near Scene::near(float x, float y, float z) const {
    Near best;
    for (std::size_t i = 0; i < solids.size();) {
        const int slot = solids[i].slot;
        float d = 1e9f;
        for (; i < solids.size() && solids[i].slot == slot; ++i) {
            const Solid& s = solids[i];
            const float far = foot(s, x, y, z).distance;
            if (far - d < s.melt) d = melted(d, far, s.melt);
        }
        const float v = d - slot_bias(slot);
        if (v < best.distance) {
            best = {v, slot < hand_slots ? slot : second_hand + slot - hand_slots};
        }
    }
    if (best.surface >= 0) best.distance += slot_bias(best.surface % second_hand);
    if (rod) {
        const float v = rod->distance(x, y, z);
        if (v < best.distance) best = {v, rod_surface};
    }
    return best;
}

Lanes Scene::flesh_distance(Lanes x, Lanes y, Lanes z) const {
    Lanes best = all(1e9f), bias{};
    for (std::size_t i = 0; i < solids.size();) {
        const int slot = solids.data()[i].slot;
        Lanes d = all(1e9f);
        for (; i < solids.size() && solids.data()[i].slot == slot; ++i) {
            const Solid& s = solids.data()[i];
            const float melt = s.melt > 1e-3f ? s.melt : 1e-3f;
            Lanes px = x - s.ax, py = y - s.ay, pz = z - s.az;
            const Lanes t = within((px * s.bx + py * s.by + pz * s.bz) * s.inverse, 0, 1);
            px -= t * s.bx;
            py -= t * s.by;
            pz -= t * s.bz;
            const Lanes far = root(px * px + py * py + pz * pz) - (s.ra + s.slope * t);
            const Lanes h = most(melt - distance_between(d, far), all(0.f)) * (1 / melt);
            d = least(d, far) - h * h * (melt * .25f);
        }
        d -= slot_bias(slot);
        bias = d < best ? all(slot_bias(slot)) : bias;
        best = least(d, best);
    }
    return best + bias;
}

Vec Scene::normal(Vec p) const {
    const float x = float(p.x), y = float(p.y), z = float(p.z);
    const Near at = near(x, y, z);
    if (at.surface == rod_surface) {
        constexpr float e = .1f;
        const auto diff = [&](float i, float j, float k) {
            return double(rod->distance(x + i, y + j, z + k) - rod->distance(x - i, y - j, z - k));
        };
        return unit_vector({diff(e, 0, 0), diff(0, e, 0), diff(0, 0, e)});
    }
    const int slot = at.surface < second_hand ? at.surface : at.surface - second_hand + hand_slots;
    Slope acc;
    for (const Solid& s : solids) {
        if (s.slot == slot) melt_into(acc, foot(s, x, y, z), s.melt);
    }
    return unit_vector({acc.x, acc.y, acc.z});
}

Field::Field(std::span<const Limbs* const> hands, const Camera& camera, Parts parts)
    : camera_(camera) {
    for (std::size_t h = 0; h < hands.size(); ++h) {
        for (const Capsule& c : flesh(*hands[h])) {
            if (parts != Parts::deep || c.deep)
                solids_.push_back(solid(c, *hands[h], camera, int(h)));
        }
    }
    std::stable_sort(solids_.begin(), solids_.end(),
                     [](const Solid& a, const Solid& b) { return a.slot < b.slot; });
    if (parts != Parts::all || hands.empty()) return;
    const Limbs& l = *hands[0];
    const Vec o = camera * l.to_grip(l.handle.butt), d = camera * l.direction(l.handle.along);
    rod_ = Rod{float(o.x),
               float(o.y),
               float(o.z),
               float(d.x),
               float(d.y),
               float(d.z),
               float(l.handle.radius),
               float(l.handle.taper),
               float(l.handle.length)};
}

} // namespace hand
