#include "measure/retention.hpp"

#include "measure/order.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <random>

namespace measure {
namespace {

constexpr std::size_t resamples = 2000;
constexpr std::uint64_t seed = 20260517;

/// Draws medians of resampled blocks. Whole-number arithmetic on a generator whose stream the
/// language standard fixes, so every machine draws the same.
class Resampler {
  public:
    explicit Resampler(std::span<const double> values)
        : values_(values)
        , drawn_(values.size())
        , spread_(describe(values).spread)
        , step_(spread_ / std::sqrt(static_cast<double>(values.size()))) {}

    double median(std::mt19937_64& generator) {
        for (double& value : drawn_) {
            const std::uint64_t bits = generator();
            const auto index = static_cast<std::size_t>(((bits >> 32) * values_.size()) >> 32);
            value = values_[index] + step_ * unit_step(bits);
        }
        return median_in_place(drawn_) + spell_drift * spread_ * unit_step(generator());
    }

  private:
    /// Uniform about zero with a deviation of one, from the lower half of the bits.
    static double unit_step(std::uint64_t bits) {
        return std::sqrt(12.0) * (static_cast<double>(bits & 0xffffffffU) * 0x1p-32 - 0.5);
    }

    std::span<const double> values_;
    std::vector<double> drawn_;
    double spread_, step_;
};

double part_of(double before, double after, double cold, double way) {
    const double change = (after - before) * way, left = (cold - before) * way;
    if (change > 0) return left / change;
    return std::copysign(std::numeric_limits<double>::infinity(), left);
}

std::optional<Interval> range_of_part(std::span<const double> before, std::span<const double> after,
                                      std::span<const double> cold, double way) {
    std::mt19937_64 generator(seed);
    std::array blocks{Resampler(before), Resampler(after), Resampler(cold)};
    std::vector<double> parts;
    parts.reserve(resamples);
    for (std::size_t i = 0; i < resamples; ++i) {
        const double from = blocks[0].median(generator), to = blocks[1].median(generator);
        parts.push_back(part_of(from, to, blocks[2].median(generator), way));
    }
    std::sort(parts.begin(), parts.end());
    const auto outside =
        static_cast<std::size_t>(0.5 * (1 - part_level) * static_cast<double>(resamples));
    const Interval range{parts[outside], parts[resamples - 1 - outside], part_level, false};
    if (!std::isfinite(range.lower) || !std::isfinite(range.upper)) return std::nullopt;
    return range;
}

Kept judge(const Retention& found, bool clear_of_before) {
    if (!found.range) return Kept::cannot_tell;
    const Interval& range = *found.range;
    if (found.part >= kept_part) {
        return range.lower > not_kept_part && clear_of_before ? Kept::kept : Kept::cannot_tell;
    }
    if (found.part <= not_kept_part)
        return range.upper < kept_part ? Kept::not_yet : Kept::cannot_tell;
    return range.lower > 0 && range.upper < 1 ? Kept::partly : Kept::cannot_tell;
}

/// Readings are decimal and their differences are not exact in binary.
double slack(const Wanted& wanted) { return 1e-6 * wanted.step; }

bool holds_zero(const std::optional<Interval>& interval) {
    return !interval || (interval->lower <= 0 && interval->upper >= 0);
}

} // namespace

Retention retained(std::span<const double> before, std::span<const double> after,
                   std::span<const double> cold, double worth_having) {
    Retention found;
    found.cold = describe(cold);
    if (before.empty() || after.empty() || cold.empty()) return found;
    const double from = median_of(before), to = median_of(after);
    const double way = to > from ? 1 : -1;
    if (to != from) found.part = part_of(from, to, found.cold.median, way);
    if (std::min({before.size(), after.size(), cold.size()}) < shots_for_probably) return found;

    found.kept = Kept::cannot_tell;
    const double worth = worth_having * (1 - 1e-9); // 4.6 - 3.6 is under 1 in binary
    const bool worth_keeping = std::abs(to - from) >= worth && to != from;
    if (!worth_keeping || holds_zero(shift(before, after).at80)) return found;
    found.range = range_of_part(before, after, cold, way);
    found.kept = judge(found, (found.cold.median - from) * way >= worth);
    return found;
}

Retention retained(std::span<const double> before, std::span<const double> after,
                   std::span<const double> cold, const Wanted& wanted) {
    Retention found = retained(before, after, cold, wanted.worth_having);
    if (found.kept != Kept::kept) return found;
    const bool up = median_of(after) > median_of(before);
    if (up ? found.cold.median > wanted.most + slack(wanted)
           : found.cold.median < wanted.least - slack(wanted))
        found.kept = Kept::past;
    return found;
}

} // namespace measure
