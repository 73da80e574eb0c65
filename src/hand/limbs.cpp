#include "hand/limbs.hpp"

namespace hand {

double Handle::clear(Vec p, double ball) const {
    const Vec w = p - butt;
    const double s = dot(w, along);
    return hand::length(w - along * s) - radius_at(std::clamp(s, 0.0, length)) - ball;
}

Vec Limbs::to_grip(Vec p) const {
    Vec g = grip * (p - origin);
    if (reversed) g.y = -g.y;
    g.x += shift;
    return g;
}

Vec Limbs::direction(Vec d) const {
    Vec g = grip * d;
    if (reversed) g.y = -g.y;
    return g;
}

Vec Limbs::from_grip(Vec p) const {
    p.x -= shift;
    if (reversed) p.y = -p.y;
    return origin + grip.back(p);
}

double clear_of(const Handle& handle, Vec a, Vec b, double ra, double rb, double from, int n) {
    double best = 1e9;
    for (int i = 0; i < n; ++i) {
        const double t = from + (1 - from) * i / (n - 1);
        best = std::min(best, handle.clear(lerp(a, b, t), mix(ra, rb, t)));
    }
    return best;
}

} // namespace hand
