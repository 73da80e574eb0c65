#include "hand/pose.hpp"

#include <cstdlib>

namespace hand {
namespace {

constexpr double neutral_knuckles = 2;
constexpr double gap_lift = 14; ///< at the little finger's ray: about 5 mm under the pad

/// What was seen, else the coach's target, else neutral.
template <class T>
T chosen(const std::optional<T>& seen, const std::optional<T>& target, T neutral) {
    return seen ? *seen : target.value_or(neutral);
}

double lay_of(unit::Lay lay) {
    return lay == unit::Lay::fingers ? 0 : lay == unit::Lay::between ? .5 : 1;
}

/// Seen square it is square, wherever it lies; else it slants the more the deeper it lies.
double slant_of(double lay, bool square) { return square ? 0 : std::max(20.0, 42 * lay); }

double clock_of(unit::ThumbSide side) {
    return side == unit::ThumbSide::lead_side ? 11.5
           : side == unit::ThumbSide::centre  ? 12.05
                                              : 12.45;
}

double reach_of(unit::ThumbLength length) {
    return length == unit::ThumbLength::short_thumb ? .05
           : length == unit::ThumbLength::middle    ? .4
                                                    : .9;
}

Hold hold_without_turn(const Wish& wish) {
    const unit::Grip &s = wish.seen, &t = wish.target;
    Hold h;
    h.lay = lay_of(chosen(s.lay, t.lay, unit::Lay::fingers));
    h.clock = clock_of(chosen(s.thumb_side, t.thumb_side, unit::ThumbSide::trail_side));
    h.reach = reach_of(chosen(s.thumb_length, t.thumb_length, unit::ThumbLength::middle));
    h.heel = chosen(s.heel_pad, t.heel_pad, unit::HeelPad::on_top) == unit::HeelPad::on_top ? 1 : 0;
    h.gap = chosen(s.gap, t.gap, false) ? gap_lift : 0;
    return h;
}

/// Knuckles decide; a V counts when nobody counted knuckles.
double turn_of(const Anatomy& body, const Hold& hold, const Wish& wish) {
    if (!wish.seen.knuckles && wish.seen.v) return turn_for_v(body, hold, v_middle(*wish.seen.v));
    if (!wish.seen.knuckles && !wish.target.knuckles && wish.target.v) {
        return turn_for_v(body, hold, v_middle(*wish.target.v));
    }
    return turn_for_knuckles(body, hold,
                             chosen(wish.seen.knuckles, wish.target.knuckles, neutral_knuckles));
}

int steps_apart(unit::VPoint a, unit::VPoint b) { return std::abs(int(a) - int(b)); }

Limbs check(const Anatomy& body, Hold hold) {
    hold.only_index = hold.thumb_free = true;
    hold.forearm = {-.85, .55, .35};
    return solve(body, hold);
}

} // namespace

Pose::Pose(const Wish& wish)
    : wish_(wish)
    , body_(anatomy(wish.build)) {
    hold_ = hold_without_turn(wish);
    hold_.turn = turn_of(body_, hold_, wish);
    lead_ = solve(body_, hold_);
    one_finger_ = check(body_, hold_);
    balance_ = hand::balance(one_finger_);
    find_contradiction();
}

std::optional<double> Pose::v_seen() const {
    const auto& seen = wish_.seen.v;
    if (!seen) return {};
    const double drawn = v_degrees(lead_);
    return steps_apart(v_point(drawn), *seen) == 1 ? v_middle(*seen) : drawn;
}

void Pose::find_contradiction() {
    const unit::Grip& s = wish_.seen;
    const auto add = [&](const char* key) {
        contradiction_ += contradiction_.empty() ? "" : " ";
        contradiction_ += key;
    };
    const auto off = [&](unit::VPoint v) { return steps_apart(v_point(v_degrees(lead_)), v); };
    if (s.knuckles && knuckle_count(knuckle_views(lead_)) != std::lround(std::floor(*s.knuckles)) &&
        std::floor(*s.knuckles) == *s.knuckles) {
        add("knuckles-lay");
    } else if (s.knuckles && s.v && off(*s.v) > 1) {
        add("knuckles-v");
    }
    const bool on_top = s.heel_pad == unit::HeelPad::on_top;
    if (s.gap == true && on_top) add("gap-pad");
    // A club may fall for a pad that nobody looked at; it does not stay for one.
    const bool stays = s.balance == unit::Balance::stays;
    if (s.balance && s.lay && stays != balance_.rests && (stays || on_top)) add("lay-balance");
}

Limbs Pose::open_palm() const {
    Hold h = hold_;
    h.open = h.thumb_free = true;
    h.closure = 0;
    h.spread = .8;
    h.lean = mix(5, -3, h.lay);
    h.slant = slant_of(h.lay, chosen(wish_.seen.square, wish_.target.square, h.lay == 0));
    h.forearm = {};
    h.stick_out = 46 * body_.across;
    return solve(body_, h);
}

Limbs Pose::first_half() const {
    Hold h = hold_;
    h.thumb_free = true;
    h.fingers_late = !has_fingers_first();
    return solve(body_, h);
}

bool Pose::has_fingers_first() const {
    return chosen(wish_.seen.fingers_first, wish_.target.fingers_first, true);
}

Limbs Pose::with_thumb(double reach) const {
    Hold h = hold_;
    h.reach = reach;
    return solve(body_, h);
}

Facts facts(const Pose& pose) {
    const Limbs& l = pose.lead();
    Facts f;
    f.knuckles = knuckle_count(knuckle_views(l));
    f.v = {v_degrees(l)};
    f.v_points = v_point(f.v.value);
    f.lay = {lay_degrees(pose.open_palm())};
    const ButtContact butt = butt_contact(l);
    f.gap_mm = butt.gap;
    f.held_share = butt.share;
    for (int i = 0; i < fingers; ++i)
        f.contacts.push_back(phalanx_contact(l, i));
    f.rests = pose.balance().rests;
    f.contradiction = pose.has_contradiction();
    f.contradiction_key = pose.contradiction();
    return f;
}

std::shared_ptr<const Pose> pose(const Wish& wish) { return std::make_shared<const Pose>(wish); }

} // namespace hand
