#include "measure/change.hpp"

#include "measure/order.hpp"
#include "measure/verdict.hpp"

#include <algorithm>
#include <cmath>

namespace measure {
namespace {

/// Root mean square of both robust spreads, weighed by count less one.
double pooled_spread(const Sample& before, const Sample& after) {
    const auto weight = [](const Sample& sample) {
        return sample.count > 1 ? static_cast<double>(sample.count - 1) : 0.0;
    };
    const double all = weight(before) + weight(after);
    if (all == 0) return 0;
    const double squares = weight(before) * before.spread * before.spread +
                           weight(after) * after.spread * after.spread;
    return std::sqrt(squares / all);
}

bool was_already_moving(std::span<const double> before, std::span<const double> after,
                        double spread) {
    const std::size_t third = before.size() / 3, later = after.size() / 3;
    if (third < 3 || later < 3 || spread <= 0) return false;
    const double start = median_of(before.first(third));
    const double way = median_of(after.first(later)) - start;
    const double gone = median_of(before.last(third)) - start;
    return std::abs(way) >= spread && gone / way >= 0.75;
}

std::size_t count_nearer(const Wanted& wanted, double before_median,
                         std::span<const double> after) {
    const double middle = distance_from(wanted, before_median) - 1e-6 * wanted.step;
    return static_cast<std::size_t>(std::count_if(after.begin(), after.end(), [&](double value) {
        return distance_from(wanted, value) < middle;
    }));
}

} // namespace

Change compare(std::span<const double> before, std::span<const double> after,
               const std::optional<Wanted>& wanted, std::size_t set_aside_before,
               std::size_t set_aside_after) {
    Change change;
    change.before = describe(before, set_aside_before);
    change.after = describe(after, set_aside_after);
    change.shift = shift(before, after);
    change.pooled_spread = pooled_spread(change.before, change.after);
    if (wanted) change.pooled_spread = std::max(change.pooled_spread, wanted->step);
    if (change.before.spread > 0) change.spread_ratio = change.after.spread / change.before.spread;
    change.already_moving = was_already_moving(before, after, change.pooled_spread);
    if (!wanted) return change;

    const Sides sides = sides_of(*wanted, before);
    const int way = wanted_way(*wanted, change.before.median, sides);
    change.inside_before = sides.inside;
    change.inside_after = sides_of(*wanted, after).inside;
    change.straddles = straddles(sides);
    change.at_home = way == 0 && !change.straddles && change.after.count > 0 &&
                     distance_from(*wanted, change.after.median) <= 1e-6 * wanted->step;
    change.nearer = count_nearer(*wanted, change.before.median, after);
    change.verdict = judge(change, *wanted, way);
    if (change.verdict == Verdict::cannot_tell) {
        change.shots_that_would_tell = shots_needed(change, *wanted, way);
    }
    return change;
}

} // namespace measure
