#include "measure/verdict.hpp"

#include "measure/rank.hpp"

#include <algorithm>
#include <cmath>

namespace measure {
namespace {

/// Readings are decimal and their differences are not exact in binary: 4.6 - 3.6 is under 1.
double slack(const Wanted& wanted) { return 1e-6 * wanted.step; }

std::size_t fewer(const Change& change) {
    return std::min(change.before.count, change.after.count);
}

/// Whether the whole interval lies further than the clear part of the spread to that side.
bool beyond(const std::optional<Interval>& interval, int way, const Change& change,
            const Wanted& wanted) {
    if (!interval || way == 0) return false;
    const double nearest = way > 0 ? interval->lower : -interval->upper;
    return nearest > clear_of_zero * change.pooled_spread + slack(wanted);
}

/// The full rule of "changed", to either side.
bool clearly_moved(const Change& change, const Wanted& wanted, int way) {
    return fewer(change) >= shots_for_changed && beyond(change.shift.at95, way, change, wanted) &&
           way * change.shift.value >= wanted.worth_having - slack(wanted);
}

bool within_worth(const Change& change, const Wanted& wanted) {
    const auto& interval = change.shift.at90;
    const double most = wanted.worth_having + slack(wanted);
    return interval && interval->lower >= -most && interval->upper <= most;
}

/// Whether the after median lies beyond the far side of the range.
bool passed(const Change& change, const Wanted& wanted, int way) {
    if (way > 0) return change.after.median > wanted.most + slack(wanted);
    return change.after.median < wanted.least - slack(wanted);
}

/// By the standard deviation and by the robust spread alike: with a mishit in twenty either alone
/// halves by luck nearly twice as often as it should. The reading step is the floor of what came
/// after.
bool drew_together(const Change& change, const Wanted& wanted) {
    const auto halved = [&](double before, double after) {
        return std::max(after, wanted.step) <= tighter_ratio * before;
    };
    return halved(change.before.spread, change.after.spread) &&
           halved(change.before.sd, change.after.sd);
}

Verdict judge_spread(const Change& change, const Wanted& wanted) {
    const bool enough = fewer(change) >= shots_for_tighter;
    return enough && drew_together(change, wanted) ? Verdict::tighter : Verdict::cannot_tell;
}

/// For a block that was where it should be: only leaving the range can be said.
Verdict judge_at_home(const Change& change, const Wanted& wanted) {
    const int out = change.shift.value > 0 ? 1 : -1;
    if (clearly_moved(change, wanted, out) && passed(change, wanted, out))
        return Verdict::other_way;
    return within_worth(change, wanted) ? Verdict::about_same : Verdict::cannot_tell;
}

Verdict judge_shift(const Change& change, const Wanted& wanted, int way) {
    const Verdict far_side = Verdict::past_square;
    if (clearly_moved(change, wanted, way)) {
        return passed(change, wanted, way) ? far_side : Verdict::changed;
    }
    if (clearly_moved(change, wanted, -way)) return Verdict::other_way;
    if (within_worth(change, wanted)) return Verdict::about_same;
    if (beyond(change.shift.at80, way, change, wanted)) {
        return passed(change, wanted, way) ? far_side : Verdict::probably;
    }
    return Verdict::cannot_tell;
}

/// Standard error of the shift with one shot a side, from today's 95 % interval.
double error_of_one(const Change& change) {
    const Interval& interval = *change.shift.at95;
    const double z = normal_quantile(0.5 + 0.5 * interval.level);
    const double n = static_cast<double>(change.before.count),
                 m = static_cast<double>(change.after.count);
    return 0.5 * (interval.upper - interval.lower) / z / std::sqrt(0.5 / n + 0.5 / m);
}

} // namespace

double distance_from(const Wanted& wanted, double value) {
    return std::max({wanted.least - value, value - wanted.most, 0.0});
}

Sides sides_of(const Wanted& wanted, std::span<const double> values) {
    Sides sides;
    for (const double value : values) {
        const bool below = value < wanted.least - slack(wanted);
        const bool above = value > wanted.most + slack(wanted);
        ++(below ? sides.below : above ? sides.above : sides.inside);
    }
    return sides;
}

bool straddles(const Sides& sides) {
    const auto all = static_cast<double>(sides.below + sides.inside + sides.above);
    const auto rarer = static_cast<double>(std::min(sides.below, sides.above));
    return rarer > 0 && rarer >= side_missed * all;
}

int wanted_way(const Wanted& wanted, double before_median, const Sides& before) {
    if (before_median > wanted.most + slack(wanted)) return -1;
    if (before_median < wanted.least - slack(wanted)) return 1;
    const double often =
        side_missed * static_cast<double>(before.below + before.inside + before.above);
    const bool below = before.below > 0 && static_cast<double>(before.below) >= often;
    const bool above = before.above > 0 && static_cast<double>(before.above) >= often;
    return static_cast<int>(below) - static_cast<int>(above);
}

Verdict judge(const Change& change, const Wanted& wanted, int way) {
    if (!wanted.comparable) return Verdict::not_comparable;
    if (!wanted.named_before) return Verdict::not_judged;
    if (fewer(change) < shots_for_probably) return Verdict::first_look;
    if (change.straddles) return judge_spread(change, wanted);
    return way == 0 ? judge_at_home(change, wanted) : judge_shift(change, wanted, way);
}

std::optional<std::size_t> shots_needed(const Change& change, const Wanted& wanted, int way) {
    if (change.straddles) {
        const bool enough = fewer(change) >= shots_for_tighter;
        return !enough && drew_together(change, wanted) ? std::optional(shots_for_tighter)
                                                        : std::nullopt;
    }
    if (!change.shift.at95) return std::nullopt;
    const double size = std::abs(change.shift.value);
    const bool worth = size >= wanted.worth_having - slack(wanted);
    if (worth && way == 0) return std::nullopt;
    // Power of four in five: 0.84 standard errors more than the interval's own.
    const double room =
        worth ? size - clear_of_zero * change.pooled_spread : wanted.worth_having - size;
    const double errors = normal_quantile(worth ? 0.975 : 0.95) + normal_quantile(0.8);
    if (room <= 0) return std::nullopt;
    const double needed = std::ceil(std::pow(errors * error_of_one(change) / room, 2));
    if (needed > static_cast<double>(most_shots_worth_telling)) return std::nullopt;
    const std::size_t least = worth ? shots_for_changed : shots_for_probably;
    return std::max({static_cast<std::size_t>(needed), least, fewer(change) + 1});
}

} // namespace measure
