#include "report/tell_ball_block.hpp"

#include "measure/change.hpp"
#include "report/tell_ball.hpp"

#include <algorithm>
#include <cmath>

namespace report {

namespace {

using unit::Measure;

template <class Q>
std::optional<Q> take(const shots::Shot& shot, Measure measure) {
    const auto value = shot[measure];
    return value ? std::optional<Q>(Q{*value}) : std::nullopt;
}

template <class Q, class Get>
std::optional<Q> median(const std::vector<Seen>& seen, const Get& get) {
    std::vector<double> values;
    for (const Seen& s : seen)
        if (const std::optional<Q> value = get(s)) values.push_back(value->value);
    if (values.empty() || 2 * values.size() < seen.size()) return std::nullopt;
    return Q{measure::describe(values).median};
}

/// Leads the modelled line through the measured landing spot and height: along and up in
/// proportion, sideways by a bend that grows with the square of the way.
void lead_through(page::DrawnFlight& flight, const Seen& seen) {
    const auto& m = flight.model;
    flight.line = m.places;
    if (!seen.shot.carry || m.along.value <= 0) return;
    flight.landing_measured = true;
    const double carry = seen.shot.carry->value,
                 offline = seen.shot.offline ? seen.shot.offline->value
                                             : m.offline.value * carry / m.carry.value;
    if (std::abs(offline) >= carry) return;
    const double along = std::sqrt(carry * carry - offline * offline),
                 longer = along / m.along.value, end = m.offline.value * longer,
                 higher = seen.apex && m.apex.value > 0 ? *seen.apex / m.apex : 1;
    for (auto& place : flight.line) {
        const double way = place.along / m.along;
        place.along = place.along * longer;
        place.right = {place.right.value * longer + (offline - end) * way * way};
        place.up = place.up * higher;
    }
}

std::optional<ball::Launch> launch_of(const Seen& seen, const page::BallStory& story) {
    std::optional<ball::Launch> launch;
    if (const auto delivery = delivery_of(seen, story))
        launch = ball::strike(*delivery, story.head);
    const bool whole =
        seen.shot.ball_speed && seen.launch && seen.shot.start && seen.spin && seen.axis;
    if (!launch && !whole) return std::nullopt;
    if (!launch) launch = ball::Launch{};
    if (seen.shot.ball_speed) launch->speed = *seen.shot.ball_speed;
    if (seen.launch) launch->elevation = *seen.launch;
    if (seen.shot.start) launch->start = *seen.shot.start;
    if (seen.spin) launch->spin = *seen.spin;
    if (seen.axis) launch->axis = *seen.axis;
    return launch;
}

} // namespace

std::vector<Seen> counted_shots(const shots::Table& table, shots::Block block) {
    std::vector<Seen> out;
    const auto measured = [&](Measure m) { return table.measured[static_cast<std::size_t>(m)]; };
    for (const auto& shot : table.shots) {
        if (shot.block != block || !shot.set_aside.empty()) continue;
        Seen s;
        s.shot.face = take<unit::Degrees>(shot, Measure::face);
        s.shot.path = take<unit::Degrees>(shot, Measure::path);
        s.shot.loft = take<unit::Degrees>(shot, Measure::loft);
        s.shot.attack = take<unit::Degrees>(shot, Measure::attack);
        s.shot.club_speed = take<unit::MetresPerSecond>(shot, Measure::club_speed);
        s.shot.ball_speed = take<unit::MetresPerSecond>(shot, Measure::ball_speed);
        if (measured(Measure::start)) s.shot.start = take<unit::Degrees>(shot, Measure::start);
        s.shot.curve = take<unit::Metres>(shot, Measure::curve);
        s.shot.carry = take<unit::Metres>(shot, Measure::carry);
        s.shot.offline = take<unit::Metres>(shot, Measure::offline);
        s.launch = take<unit::Degrees>(shot, Measure::launch);
        s.axis = take<unit::Degrees>(shot, Measure::axis);
        s.spin = take<unit::Rpm>(shot, Measure::spin);
        s.apex = take<unit::Metres>(shot, Measure::apex);
        out.push_back(s);
    }
    return out;
}

std::vector<ball::Shot> ball_shots(const std::vector<Seen>& seen) {
    std::vector<ball::Shot> out;
    for (const Seen& s : seen)
        out.push_back(s.shot);
    return out;
}

Seen middle_of(const std::vector<Seen>& seen) {
    using unit::Degrees, unit::Metres, unit::MetresPerSecond;
    Seen m;
    m.shot.face = median<Degrees>(seen, [](const Seen& s) { return s.shot.face; });
    m.shot.path = median<Degrees>(seen, [](const Seen& s) { return s.shot.path; });
    m.shot.loft = median<Degrees>(seen, [](const Seen& s) { return s.shot.loft; });
    m.shot.attack = median<Degrees>(seen, [](const Seen& s) { return s.shot.attack; });
    m.shot.club_speed =
        median<MetresPerSecond>(seen, [](const Seen& s) { return s.shot.club_speed; });
    m.shot.ball_speed =
        median<MetresPerSecond>(seen, [](const Seen& s) { return s.shot.ball_speed; });
    m.shot.start = median<Degrees>(seen, [](const Seen& s) { return s.shot.start; });
    m.shot.curve = median<Metres>(seen, [](const Seen& s) { return s.shot.curve; });
    m.shot.carry = median<Metres>(seen, [](const Seen& s) { return s.shot.carry; });
    m.shot.offline = median<Metres>(seen, [](const Seen& s) { return s.shot.offline; });
    m.launch = median<Degrees>(seen, [](const Seen& s) { return s.launch; });
    m.axis = median<Degrees>(seen, [](const Seen& s) { return s.axis; });
    m.spin = median<unit::Rpm>(seen, [](const Seen& s) { return s.spin; });
    m.apex = median<Metres>(seen, [](const Seen& s) { return s.apex; });
    return m;
}

ball::EffectiveLoft loft_of(const Seen& seen, const page::BallStory& story) {
    ball::LoftEvidence evidence{
        seen.shot.loft,       seen.launch, seen.shot.attack, seen.shot.face, seen.shot.club_speed,
        seen.shot.ball_speed, {}};
    if (story.club) return ball::effective_loft(evidence, *story.club, story.head);
    evidence.face.reset(); // both of these need the club's own loft
    evidence.ball_speed.reset();
    return ball::effective_loft(evidence, {}, story.head);
}

std::optional<ball::Delivery> delivery_of(const Seen& seen, const page::BallStory& story) {
    const auto loft = loft_of(seen, story);
    const auto& shot = seen.shot;
    if (!shot.face || !shot.path || loft.origin == ball::LoftOrigin::unknown) return std::nullopt;
    const auto own = story.club ? story.club->loft : loft.loft.value;
    ball::Delivery d{*shot.face,
                     *shot.path,
                     shot.attack ? *shot.attack : usual_attack(own),
                     loft.loft.value,
                     {}};
    if (shot.club_speed)
        d.club_speed = *shot.club_speed;
    else if (shot.ball_speed)
        d.club_speed = ball::club_speed_for(*shot.ball_speed, d, story.head);
    else
        return std::nullopt;
    return d;
}

std::optional<page::DrawnFlight> flight_of(const Seen& seen, const page::BallStory& story) {
    const auto launch = launch_of(seen, story);
    if (!launch || launch->elevation.value <= 0) return std::nullopt;
    page::DrawnFlight flight{ball::fly(*launch, story.air), {}, false};
    if (flight.model.below_range || flight.model.along.value <= 0) return std::nullopt;
    lead_through(flight, seen);
    return flight;
}

} // namespace report
