// The trail hand: a right hand further down the same handle, clear of the lead hand.
#include "hand/pose.hpp"
#include "hand/solve.hpp"

namespace hand {
namespace {

/// Interlocked fingers change sides by that much, millimetres.
constexpr double lead_crosses = 6, trail_crosses = 24;
constexpr double pressed = 1.0; ///< flesh may give that much where the hands meet, millimetres
constexpr double folded = 5;    ///< the hollow of the palm folds round the lead thumb by that much

/// The lead hand as something in the way, grip frame; for the interlock without its forefinger,
/// which afterwards closes over the other hand's little finger.
struct InTheWay {
    std::vector<Solid> solids;
    double distance(Vec p) const {
        return Scene{solids, nullptr}.distance(float(p.x), float(p.y), float(p.z));
    }
};

InTheWay in_the_way(const Limbs& limbs, int without) {
    const Limbs* one[] = {&limbs};
    const Field field(one, {{ex, ey, ez}}, Field::Parts::flesh);
    InTheWay out;
    for (const Solid& s : field.scene().solids) {
        if (s.slot != without) out.solids.push_back(s);
    }
    return out;
}

/// Free space between the hands beyond what flesh gives; negative = they would pass through each
/// other.
double spare(const Limbs& trail, const InTheWay& lead) {
    double worst = 1e9;
    for (const Capsule& c : flesh(trail)) {
        if (c.a.y < -20) continue; // forearms
        for (int i = 0; i <= 6; ++i) {
            const Vec p = trail.to_grip(lerp(c.a, c.b, i / 6.0));
            const double give = c.deep || c.surface == palm_side ? folded : pressed;
            worst = std::min(worst, lead.distance(p) - mix(c.ra, c.rb, i / 6.0) + give);
        }
    }
    return worst;
}

Limbs trail_at(const Anatomy& body, const InTheWay& lead, double shift, double lift,
               unit::Join join) {
    Hold h;
    h.turn = -4;
    h.clock = 12.4;
    h.reach = .35;
    h.lift = lift;
    if (join == unit::Join::interlock) h.little_aside = -trail_crosses * body.across;
    const Obstacle obstacle{[&](Vec p, double ball) {
                                return lead.distance({p.x + shift, -p.y, p.z}) - ball;
                            },
                            {false, false, false, join != unit::Join::ten_finger}};
    Limbs l = solve(body, h, obstacle);
    l.reversed = true;
    l.shift = shift;
    return l;
}

/// The lead forefinger closed over the other hand. Where that lies in its way from the start, the
/// hand further down the handle makes room.
BothHands hooked(const Anatomy& body, const BothHands& hands) {
    constexpr double bent_enough = 5, step = 2, most = 12; // degrees; millimetres
    const InTheWay lead = in_the_way(hands.lead, int(first_finger) + index_finger);
    std::optional<BothHands> first;
    for (double more = 0; more <= most; more += step) {
        BothHands out = hands;
        if (more > 0) {
            const double shift = hands.trail.shift + more * body.across;
            out.trail = trail_at(body, lead, shift, hands.trail.hold.lift, unit::Join::interlock);
        }
        const InTheWay other = in_the_way(out.trail, -1);
        Hold h = hands.lead.hold;
        h.index_aside = lead_crosses * body.across;
        out.lead = solve(body, h,
                         {[&](Vec p, double ball) { return other.distance(p) - ball; },
                          {true, false, false, false}});
        if (out.lead.finger[index_finger].angle[0] >= bent_enough &&
            spare(out.trail, in_the_way(out.lead, -1)) >= 0)
            return out;
        if (!first) first = out;
    }
    return *first;
}

} // namespace

const BothHands& Pose::both_hands() const {
    std::call_once(both_->once, [&] { both_->hands = joined(); });
    return both_->hands;
}

BothHands Pose::joined() const {
    const unit::Join join =
        wish_.seen.join ? *wish_.seen.join : wish_.target.join.value_or(wish_.join);
    const bool ten = join == unit::Join::ten_finger, locked = join == unit::Join::interlock;
    // Joined by a finger the hands stay so near that the little finger reaches the other hand. When
    // the trail palm has no room there, the lead thumb that it covers is drawn up.
    const double from = ten ? 76 : locked ? 62 : 56, to = ten ? 130 : 81;
    BothHands out{lead_, {}};
    double most = -1e9;
    for (const double reach : {hold_.reach, .15, 0.0}) {
        if (reach > hold_.reach || (most > -1e8 && reach == hold_.reach)) continue;
        const Limbs first = reach < hold_.reach ? with_thumb(reach) : lead_;
        const InTheWay lead = in_the_way(first, locked ? int(first_finger) + index_finger : -1);
        for (double shift = from; shift < to && most < 0; shift += 5) {
            for (double lift = 0; lift <= 16 && most < 0; lift += 4) {
                Limbs l = trail_at(body_, lead, shift * body_.across, lift * body_.across, join);
                const double s = spare(l, lead);
                if (s <= most) continue;
                most = s;
                out = {first, l};
            }
        }
        if (most >= 0 || ten) break;
    }
    if (!locked) return out;
    return hooked(body_, out);
}

} // namespace hand
