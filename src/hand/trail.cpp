// The trail hand: a right hand further down the same handle, clear of the lead hand.
#include "hand/pose.hpp"
#include "hand/solve.hpp"

namespace hand {
namespace {

constexpr double pressed = 2.5; ///< flesh may give that much where the hands meet, millimetres
constexpr double folded = 7;    ///< the hollow of the palm folds round the lead thumb by that much
constexpr Camera plain{{ex, ey, ez}};

/// Deepest overlap of a trail hand with the lead hand's field (grip frame); positive = free.
double clearance(const Limbs& trail, const Field& lead) {
    double worst = 1e9;
    for (const Capsule& c : flesh(trail)) {
        if (c.surface == palm_side && c.deep && c.a.y < -20) continue; // forearms may touch
        for (int i = 0; i <= 6; ++i) {
            const double t = i / 6.0;
            const Vec p = trail.to_grip(lerp(c.a, c.b, t));
            const double give = c.deep ? folded - pressed : 0;
            worst = std::min(worst, lead.distance(p) - mix(c.ra, c.rb, t) + give);
        }
    }
    return worst;
}

} // namespace

Limbs Pose::trail() const {
    const Limbs* one[] = {&lead_};
    const Field lead(one, plain, Field::Parts::flesh);
    const unit::Join join = wish_.seen.join.value_or(wish_.join);
    Hold h;
    h.turn = 4;
    h.clock = 12.4;
    h.reach = .35;
    h.forearm = {-.62, .50, .62};
    Limbs best;
    double least = -1e9;
    const double from = join == unit::Join::ten_finger ? 74 : 58;
    for (double lift = 0; lift <= 12; lift += 3) {
        for (double shift = from; shift < from + 40; shift += 3) {
            h.lift = lift;
            const double s = shift * body_.across;
            const Obstacle obstacle{[&](Vec p, double ball) {
                                        p.y = -p.y;
                                        p.x += s;
                                        return lead.distance(p) - ball;
                                    },
                                    {false, false, false, join != unit::Join::ten_finger}};
            Limbs l = solve(body_, h, obstacle);
            l.reversed = true;
            l.shift = s;
            const double c = clearance(l, lead);
            if (c > -pressed) return l;
            if (c > least) {
                least = c;
                best = l;
            }
        }
    }
    return best;
}

} // namespace hand
