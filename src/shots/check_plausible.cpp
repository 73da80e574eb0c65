#include "shots/columns.hpp"
#include "shots/limits.hpp"
#include "shots/mixed_up.hpp"
#include "shots/odd.hpp"
#include "shots/read_table.hpp"
#include "unit/display.hpp"
#include "unit/quantity.hpp"

#include <algorithm>
#include <cmath>

namespace shots {

namespace {

using unit::Measure;

constexpr std::size_t at(Measure m) { return static_cast<std::size_t>(m); }

class Check {
  public:
    Check(const Table& table, const diag::Source& source, diag::Findings& findings,
          std::string_view club)
        : table_(table)
        , source_(source)
        , findings_(findings)
        , club_(club) {}

    void run() {
        check_order(table_, source_, findings_);
        const Doubted doubted = check_mixed_up(table_, source_, findings_, club_);
        for (const unit::MeasureRow& row : unit::measures)
            if (table_.measured[at(row.measure)] && !told(doubted, row.measure))
                limits(row.measure);
        if (!doubted.speeds) {
            club_speed();
            ball_speed();
        }
        if (!doubted.speeds && !doubted.landing) {
            carry();
            check_short_carry(table_, source_, findings_);
        }
        if (!start_side()) {
            check_start_range(table_, source_, findings_);
            if (!doubted.landing) check_landing_side(table_, source_, findings_);
        }
        turn_side();
        face_to_path();
    }

  private:
    static bool told(const Doubted& doubted, Measure m) {
        return (doubted.speeds && (m == Measure::club_speed || m == Measure::ball_speed)) ||
               (doubted.landing && (m == Measure::carry || m == Measure::offline));
    }
    void limits(Measure measure);
    void club_speed();
    void ball_speed();
    void carry();
    bool start_side();
    void turn_side();
    void face_to_path();
    template <class Rule>
    Odd collect(Rule odd) const {
        Odd found;
        for (const Shot& shot : table_.shots)
            if (odd(shot)) found.add(shot);
        return found;
    }
    void warn(const Odd& odd, Measure measure, std::string what, std::string hint) {
        shots::warn(table_, odd, place_of(*odd.first, measure, source_), std::move(what),
                    std::move(hint), findings_);
    }

    const Table& table_;
    const diag::Source& source_;
    diag::Findings& findings_;
    std::string_view club_;
};

void Check::limits(Measure measure) {
    const Limits limits = usual_limits(measure);
    const Odd odd = collect([&](const Shot& shot) {
        const auto value = shot[measure];
        return value && (*value < limits.least || *value > limits.most);
    });
    if (!odd.first) return;
    std::string what = diag::quote(unit::row(measure).key) + " is out of any golfer's range";
    warn(odd, measure, std::move(what),
         "check the column and its unit; a shot that was no shot can be set aside");
}

std::string in_both(double metres_per_second) {
    const auto whole = [](double v) { return std::to_string(std::lround(v)); };
    return whole(metres_per_second / unit::mps_in_a_mph) + " mph (" +
           whole(metres_per_second / unit::mps_in_a_kmh) + " km/h)";
}

void Check::club_speed() {
    const auto name = [&](const Shot& shot) { return shot.club.empty() ? club_ : shot.club; };
    const Odd odd = collect([&](const Shot& shot) {
        const auto speed = shot[Measure::club_speed];
        return speed && *speed > fastest(name(shot)) &&
               *speed <= usual_limits(Measure::club_speed).most;
    });
    if (!odd.first) return;
    const double speed = *(*odd.first)[Measure::club_speed];
    const std::string_view club = name(*odd.first);
    std::string what = "club speed of " + in_both(speed) + " with ";
    what += club.empty() ? "any club" : diag::quote(club);
    what += " is faster than the best hit it";
    const bool kilometres = speed * unit::mps_in_a_kmh / unit::mps_in_a_mph < fastest(club);
    warn(odd, Measure::club_speed, std::move(what),
         kilometres
             ? "if these are km/h, say so in the table's header, or in the record's 'shots: units'"
             : "is this the ball speed? check 'shots: columns' in the record");
}

/// A ball leaves at most about 1.56 times as fast as the club came; 1.6 leaves room for rounding.
void Check::ball_speed() {
    const Odd odd = collect([&](const Shot& shot) {
        const auto ball = shot[Measure::ball_speed], club = shot[Measure::club_speed];
        return ball && club && *club > 3 && *ball / *club > 1.6;
    });
    if (odd.first)
        warn(odd, Measure::ball_speed, "the ball is more than 1.6 times as fast as the club",
             "no strike does that: check that both columns have the same unit");
}

/// In 1.225 kg/m3 air a drive carries about 3.4 m for each m/s of ball speed (259 yards for 71.5
/// m/s, a published calculation); 4.2 leaves room for altitude and wind.
void Check::carry() {
    const Odd odd = collect([&](const Shot& shot) {
        const auto carry = shot[Measure::carry], ball = shot[Measure::ball_speed];
        return carry && ball && *carry > 4.2 * *ball && *carry <= usual_limits(Measure::carry).most;
    });
    if (odd.first)
        warn(odd, Measure::carry, "the carry is longer than a ball of that speed flies",
             "check the units: is the carry in yards or feet, or the ball speed in another unit?");
}

/// A ball starts between path and face, nearer the face. When turning one column round explains
/// the starts far better, its sign is likely flipped.
bool Check::start_side() {
    struct Turn {
        double face, path, start;
        Measure suspect;
    };
    constexpr std::array turns{Turn{1, 1, 1, Measure::start}, Turn{1, 1, -1, Measure::start},
                               Turn{-1, 1, 1, Measure::face}, Turn{1, -1, 1, Measure::path}};
    std::array<double, turns.size()> misfit{};
    std::size_t shots = 0;
    double size = 0;
    for (const Shot& shot : table_.shots) {
        const auto face = shot[Measure::face], path = shot[Measure::path],
                   start = shot[Measure::start];
        if (!face || !path || !start || !shot.set_aside.empty()) continue;
        ++shots;
        size += std::abs(*start);
        for (std::size_t i = 0; i < turns.size(); ++i) {
            const Turn& t = turns[i];
            misfit[i] +=
                std::pow(t.start * *start - 0.7 * t.face * *face - 0.3 * t.path * *path, 2);
        }
    }
    if (shots < 4 || size / static_cast<double>(shots) < 1) return false;
    const auto best = std::ranges::min_element(misfit);
    if (best == misfit.begin() || *best * 4 > misfit[0]) return false;
    const Measure suspect = turns[static_cast<std::size_t>(best - misfit.begin())].suspect;
    const Odd odd =
        collect([&](const Shot& shot) { return shot[Measure::start] && shot[suspect]; });
    const std::string key(unit::row(suspect).key);
    Odd one = odd;
    one.count = 1;
    warn(one, suspect,
         "the sign of '" + key +
             "' looks flipped: balls start between path and face, these do not (" +
             count_of(shots, "shot") + ")",
         "check 'sign' under 'shots' in the record; if only this column counts the other way, turn "
         "its "
         "signs in the table");
    return true;
}

void Check::turn_side() {
    std::size_t against = 0, all = 0;
    Odd odd;
    for (const Shot& shot : table_.shots) {
        const auto axis = shot[Measure::axis], turn = shot[Measure::face_path];
        if (!axis || !turn || std::abs(*axis) < 2 || std::abs(*turn) < 1.5) continue;
        ++all;
        if (*axis * *turn > 0) continue;
        ++against;
        odd.add(shot);
    }
    if (all >= 4 && against * 10 >= all * 8)
        warn(odd, Measure::axis, "the spin axis leans against face and path",
             "a ball curves toward the side of the face: check the sign of 'axis' in the table");
}

void Check::face_to_path() {
    if (!table_.measured[at(Measure::face_path)]) return;
    const Odd odd = collect([](const Shot& shot) {
        const auto face = shot[Measure::face], path = shot[Measure::path],
                   both = shot[Measure::face_path];
        return face && path && both && std::abs(*both - (*face - *path)) > 1;
    });
    if (odd.first)
        warn(odd, Measure::face_path, "'face to path' is not face minus path",
             "check its sign, and that the right columns are named in 'shots: columns'");
}

} // namespace

void check_plausible(const Table& table, const diag::Source& source, diag::Findings& findings,
                     std::string_view club) {
    Check(table, source, findings, club).run();
}

} // namespace shots
