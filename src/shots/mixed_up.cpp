#include "shots/mixed_up.hpp"

#include "shots/header.hpp"
#include "shots/odd.hpp"
#include "unit/quantity.hpp"

#include <algorithm>
#include <cmath>

namespace shots {

namespace {

using unit::Measure;

constexpr std::size_t fewest = 3; ///< one shank is no column

/// The shots that break `rule`, when at least four in five of those it applies to do. The rule
/// gives nothing for a shot that it cannot judge.
template <class Rule>
Odd nearly_all(const Table& table, Rule rule) {
    Odd odd;
    std::size_t judged = 0;
    for (const Shot& shot : table.shots) {
        const std::optional<bool> broken =
            shot.set_aside.empty() ? rule(shot) : std::optional<bool>();
        if (!broken) continue;
        ++judged;
        if (*broken) odd.add(shot);
    }
    return judged >= fewest && odd.count * 5 >= judged * 4 ? odd : Odd{};
}

/// Every shot that counts and breaks `rule`, in the order of the table.
template <class Rule>
std::vector<const Shot*> each(const Table& table, Rule rule) {
    std::vector<const Shot*> found;
    for (const Shot& shot : table.shots)
        if (shot.set_aside.empty() && rule(shot).value_or(false)) found.push_back(&shot);
    return found;
}

Odd odd_of(const std::vector<const Shot*>& shots) {
    return {shots.empty() ? nullptr : shots.front(), shots.size()};
}

/// " (the other lines: 3, 4 and 9)"; empty for one shot, and for so many that nobody reads them.
std::string other_lines(const std::vector<const Shot*>& shots) {
    constexpr std::size_t most = 12;
    if (shots.size() < 2 || shots.size() > most) return {};
    std::string out = shots.size() == 2 ? " (the other line: " : " (the other lines: ";
    for (std::size_t i = 1; i < shots.size(); ++i)
        out += (i == 1                  ? ""
                : i + 1 == shots.size() ? " and "
                                        : ", ") +
               std::to_string(shots[i]->line);
    return out + ")";
}

/// A ball that lands farther to the side than it carries left at more than 45 degrees.
std::optional<bool> wider_than_long(const Shot& shot) {
    const auto carry = shot[Measure::carry], offline = shot[Measure::offline];
    if (!carry || !offline) return std::nullopt;
    return std::abs(*offline) > *carry;
}

/// The least ratio of ball to club speed in a series with that club. A centred strike gives about
/// 1.5 times the cosine of the loft: more than 1 for all but wedges. Common practice, no source.
double least_ratio(std::string_view club) {
    const std::string name = plain_name(club);
    const auto is = [&](std::string_view word) { return name.find(word) != std::string::npos; };
    return is("iron") || is("wood") || is("driver") || is("hybrid") ? 1 : 0.7;
}

/// The shortest carry in a series with that ball speed; nothing where none can be told. With the
/// launch, 0.4 of the flight without air, v^2 sin(2a) / g, which no strike and no usual wind
/// undercuts; else a part of the speed. Common practice, no source.
std::optional<double> shortest_carry(double speed, std::optional<double> launch) {
    constexpr double gravity = 9.81;
    if (launch && (*launch < 4 || *launch > 75)) return std::nullopt;
    double least = speed < 35 ? 0 : speed < 55 ? speed : 1.4 * speed;
    if (launch) {
        const double flight =
            speed * speed * std::sin(2 * unit::radians(unit::Degrees{*launch})) / gravity;
        least = speed < 55 ? 0.4 * flight : std::max(least, 0.4 * flight);
    }
    return least > 0 ? std::optional(least) : std::nullopt;
}

/// How far the start lies outside face and path, degrees; negative between them.
std::optional<double> outside(const Shot& shot, Measure measure) {
    const auto face = shot[Measure::face], path = shot[Measure::path], value = shot[measure];
    if (!face || !path || !value) return std::nullopt;
    return std::max(std::min(*face, *path) - *value, *value - std::max(*face, *path));
}

/// A ball that starts to one side and curves further to it, and yet lands on the other. A tenth of
/// the carry is left to the wind; common practice, no source.
std::optional<bool> lands_across(const Shot& shot) {
    constexpr double least_start = 1, wind_part = 0.1;
    const auto face = shot[Measure::face], path = shot[Measure::path], start = shot[Measure::start],
               carry = shot[Measure::carry], offline = shot[Measure::offline];
    if (!face || !path || !start || !carry || !offline) return std::nullopt;
    const double side = *start > 0 ? 1 : -1;
    if (std::abs(*start) < least_start || (*face - *path) * side < 0) return std::nullopt;
    const double straight = *carry * std::tan(unit::radians(unit::Degrees{*start}));
    return *offline * side < 0 && std::abs(*offline - straight) > wind_part * *carry;
}

} // namespace

Doubted check_mixed_up(const Table& table, const diag::Source& source, diag::Findings& findings,
                       std::string_view club) {
    Doubted doubted;
    if (const Odd odd = nearly_all(table, wider_than_long); odd.first) {
        doubted.landing = true;
        warn(table, odd, place_of(*odd.first, Measure::carry, source),
             "'offline' is larger than 'carry'",
             "have the two columns changed places? check 'shots: columns' and the table's first "
             "line",
             findings);
    }
    const Odd odd = nearly_all(table, [&](const Shot& shot) -> std::optional<bool> {
        const auto ball = shot[Measure::ball_speed], head = shot[Measure::club_speed];
        if (!ball || !head || *head < 3) return std::nullopt;
        return *ball < *head * least_ratio(shot.club.empty() ? club : shot.club);
    });
    if (!odd.first) return doubted;
    doubted.speeds = true;
    warn(
        table, odd, place_of(*odd.first, Measure::ball_speed, source),
        "the ball is slower than the club that hits it",
        "have 'club speed' and 'ball speed' changed places, or has one of them another unit? check "
        "'shots: columns' and the table's first line",
        findings);
    return doubted;
}

void check_start_range(const Table& table, const diag::Source& source, diag::Findings& findings) {
    constexpr double off_centre = 6; // what a strike off the centre may add; common practice
    const auto far_outside = [&](const Shot& shot) -> std::optional<bool> {
        const auto off = outside(shot, Measure::start);
        return off ? std::optional(*off > off_centre) : std::nullopt;
    };
    const auto rows = each(table, far_outside);
    if (rows.empty()) return;
    const Odd odd = nearly_all(table, far_outside);
    if (!odd.first)
        return warn(table, odd_of(rows), place_of(*rows.front(), Measure::start, source),
                    "balls start between path and face, and 'start' is far outside them",
                    "check the sides of face, path and start in this line" + other_lines(rows) +
                        "; a strike far off the centre can be set aside",
                    findings);
    const Odd fits = nearly_all(table, [&](const Shot& shot) -> std::optional<bool> {
        const auto off = outside(shot, Measure::launch);
        return off ? std::optional(*off <= off_centre) : std::nullopt;
    });
    warn(table, odd, place_of(*odd.first, Measure::start, source),
         "balls start between path and face, and 'start' is far outside them",
         fits.first ? "have 'start' and 'launch' changed places? check 'shots: columns' and the "
                      "table's first line"
                    : "check that the right columns are named, and 'sign' under 'shots'",
         findings);
}

void check_landing_side(const Table& table, const diag::Source& source, diag::Findings& findings) {
    const auto rows = each(table, lands_across);
    if (rows.empty()) return;
    const bool column = nearly_all(table, lands_across).first;
    warn(table, odd_of(rows), place_of(*rows.front(), Measure::offline, source),
         "the ball starts and curves to one side, and 'offline' is on the other",
         column ? "check 'sign' under 'shots' in the record; if only 'offline' counts the other "
                  "way, turn its signs in the table"
                : "check the sides in this line" + other_lines(rows),
         findings);
}

void check_short_carry(const Table& table, const diag::Source& source, diag::Findings& findings) {
    const Odd odd = nearly_all(table, [](const Shot& shot) -> std::optional<bool> {
        const auto carry = shot[Measure::carry], ball = shot[Measure::ball_speed];
        if (!carry || !ball) return std::nullopt;
        const auto least = shortest_carry(*ball, shot[Measure::launch]);
        return least ? std::optional(*carry < *least) : std::nullopt;
    });
    if (odd.first)
        warn(table, odd, place_of(*odd.first, Measure::carry, source),
             "the carry is much shorter than a ball of that speed flies",
             "check the units: is the carry in yards or metres where the table says feet, or the "
             "ball speed in another unit?",
             findings);
}

void check_order(const Table& table, const diag::Source& source, diag::Findings& findings) {
    const Shot *first_before = nullptr, *last_after = nullptr;
    for (const Shot& shot : table.shots) {
        if (shot.block == Block::before && (!first_before || shot.number < first_before->number))
            first_before = &shot;
        if (shot.block == Block::after && (!last_after || shot.number > last_after->number))
            last_after = &shot;
    }
    if (!first_before || !last_after || last_after->number >= first_before->number) return;
    findings.warning(source.in_line(first_before->line, 0, source.line(first_before->line).size()),
                     "all shots of 'after' come before this one, the first of 'before'",
                     "have the two blocks changed places? A table that begins with the last shot "
                     "needs a column 'number'");
}

} // namespace shots
