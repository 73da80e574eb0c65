#include "drills/propose.hpp"

#include <algorithm>
#include <cmath>

namespace drills {

namespace {

// Our own thresholds, for coaches to judge; no source.
constexpr double face_off = 2, start_off = 2;  // degrees
constexpr double path_off = 4, path_leans = 2; // degrees
constexpr double nearly_equal = 2;             // degrees between face and path
constexpr double face_wide = 4;                // degrees, middle half
constexpr double square = 0.5;                 // degrees
constexpr double carry_wide = 0.15;            // middle half as a part of the median
constexpr double speed_steady = 0.04;          // the same
constexpr double speed_falls = 0.03;           // drift as a part of the median
constexpr std::size_t fewest_shots = 5;

struct Rule {
    std::string reason;
    std::vector<std::string> ids;
};
using Fit = std::optional<Rule>;

bool off(const std::optional<Middle>& value, double by) {
    return value && std::abs(value->median) >= by;
}

/// Inside a range that the coach wants nothing is off, however wide it is.
bool off(const std::optional<Middle>& value, double by, double half) {
    return off(value, by) && (half <= 0 || std::abs(value->median) > half);
}
bool face_is_off(const Observed& seen) { return off(seen.face, face_off, seen.face_half); }
bool start_is_off(const Observed& seen) { return off(seen.start, start_off, seen.start_half); }
bool path_is_off(const Observed& seen) { return off(seen.path, path_off, seen.path_half); }

/// The middle half lies on one side of nought.
bool one_sided(const Middle& value) { return value.lower * value.upper > 0; }

bool face_fine(const Observed& seen) { return seen.face && !face_is_off(seen); }

/// Turned the way this player calls open, or travelling the way called in-to-out.
double outward(double angle, unit::Hand hand) { return hand == unit::Hand::right ? angle : -angle; }

bool failed(const Observed& seen, std::initializer_list<HoldFault> faults) {
    return std::ranges::find_first_of(seen.hold_faults, faults) != seen.hold_faults.end();
}

Fit hold(const Observed& seen) {
    if (seen.hold_faults.empty()) return {};
    Rule rule{"reason.hold", {"H1"}};
    if (failed(seen, {HoldFault::gap}))
        rule.ids.emplace_back("H4");
    else if (failed(seen, {HoldFault::knuckles, HoldFault::v}))
        rule.ids.emplace_back("H3");
    else if (failed(seen, {HoldFault::pad, HoldFault::balance}))
        rule.ids.emplace_back("H2");
    else if (failed(seen, {HoldFault::join, HoldFault::thumb}))
        rule.ids.emplace_back("H6");
    return rule;
}

Fit both_to_one_side(const Observed& seen) {
    if (!face_is_off(seen) || !off(seen.path, path_leans)) return {};
    const double face = seen.face->median, path = seen.path->median;
    if (face * path <= 0 || std::abs(face - path) >= nearly_equal) return {};
    return Rule{"reason.aim-both", {"A1", "F1"}};
}

Fit to_opposite_sides(const Observed& seen) {
    if (!face_is_off(seen) || !path_is_off(seen)) return {};
    if (seen.face->median * seen.path->median >= 0) return {};
    return Rule{"reason.path-reacts", {seen.hold_looked_at ? "F1" : "H1"}};
}

Fit face(const Observed& seen) {
    if (!face_is_off(seen) || !one_sided(*seen.face)) return {};
    const bool ball_starts_off = start_is_off(seen);
    return Rule{"reason.face-off", {"F1", ball_starts_off ? "F4" : "F3"}};
}

/// No kettle for a child.
std::string steady_hold(const Observed& seen) { return seen.junior ? "H1" : "H5"; }

Fit face_spread(const Observed& seen) {
    if (!seen.face || seen.face->width() <= face_wide) return {};
    return Rule{"reason.face-spread", {steady_hold(seen), "F6"}};
}

Fit start_line(const Observed& seen) {
    if (!face_fine(seen) || !start_is_off(seen)) return {};
    return Rule{"reason.aim", {"A1", "F4"}};
}

/// P2 guards the lead side; a path to the other side gets two lines to compare.
Fit path(const Observed& seen) {
    if (!face_fine(seen) || !path_is_off(seen)) return {};
    const bool to_lead_side = outward(seen.path->median, seen.hand) < 0;
    return Rule{"reason.path", {"P1", to_lead_side ? "P2" : "P4"}};
}

Fit loft_with_face(const Observed& seen) {
    if (!seen.loft_above || *seen.loft_above <= 0 || !seen.face) return {};
    if (outward(seen.face->median, seen.hand) <= square) return {};
    return Rule{"reason.loft-face", {"F1", "H1"}};
}

Fit loft(const Observed& seen) {
    if (!seen.loft_above || *seen.loft_above <= 0 || !face_fine(seen)) return {};
    return Rule{"reason.loft", {"L1", "S1"}};
}

Fit strike(const Observed& seen) {
    if (!seen.carry || !seen.club_speed) return {};
    const bool wide = seen.carry->width() > carry_wide * seen.carry->median;
    const bool steady = seen.club_speed->width() <= speed_steady * seen.club_speed->median;
    if (!wide || !steady) return {};
    return Rule{"reason.strike", {"S4", "S1"}};
}

Fit tired(const Observed& seen) {
    if (!seen.club_speed || !seen.club_speed_drift) return {};
    if (*seen.club_speed_drift > -speed_falls * seen.club_speed->median) return {};
    return Rule{"reason.tired", {}};
}

Fit speed(const Observed& seen) {
    if (!seen.speed_wanted || seen.junior || !face_fine(seen)) return {};
    if (path_is_off(seen) || start_is_off(seen)) return {};
    return Rule{"reason.speed", {"V1", "V2"}};
}

using RuleOf = Fit (*)(const Observed&);

/// Rules that look at two measures stand before those that look at one of them: they would never
/// be reached below.
constexpr RuleOf rules[] = {both_to_one_side,
                            to_opposite_sides,
                            face,
                            face_spread,
                            start_line,
                            path,
                            loft_with_face,
                            loft,
                            strike,
                            tired,
                            speed};

/// Drills that fit anybody after a steady hold, in the order in which they fill up `next`.
constexpr const char* for_anybody[] = {"F6", "A1", "S5", "H7"};

bool holds(const std::vector<std::string>& ids, const std::string& id) {
    return std::ranges::find(ids, id) != ids.end();
}

void offer(Proposal& proposal, const std::string& id) {
    if (proposal.next.size() < 3 && !holds(proposal.ids, id) && !holds(proposal.next, id))
        proposal.next.push_back(id);
}

} // namespace

Proposal propose(const Observed& seen) {
    if (seen.pain) return {{}, "reason.pain", {}};
    std::vector<Rule> fits;
    if (auto fit = hold(seen)) fits.push_back(std::move(*fit));
    if (seen.shots < fewest_shots) {
        fits.push_back({"reason.first-look", {steady_hold(seen)}});
    } else {
        for (const auto rule : rules)
            if (auto fit = rule(seen)) fits.push_back(std::move(*fit));
    }
    if (fits.empty()) fits.push_back({"reason.none", {}});
    Proposal proposal{fits.front().ids, fits.front().reason, {}};
    for (const auto& fit : fits)
        for (const auto& id : fit.ids)
            offer(proposal, id);
    offer(proposal, steady_hold(seen));
    for (const char* id : for_anybody)
        offer(proposal, id);
    return proposal;
}

} // namespace drills
