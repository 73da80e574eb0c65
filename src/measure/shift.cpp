#include "measure/change.hpp"
#include "measure/rank.hpp"

#include <algorithm>
#include <array>

namespace measure {
namespace {

/// Puts the values of the given ranks where sorting would put them, in one sweep upwards.
void place(std::vector<double>& values, std::vector<std::size_t> ranks) {
    std::sort(ranks.begin(), ranks.end());
    auto from = values.begin();
    for (const std::size_t rank : ranks) {
        const auto at = values.begin() + static_cast<std::ptrdiff_t>(rank);
        if (at < from) continue;
        std::nth_element(from, at, values.end());
        from = at + 1;
    }
}

/// Estimate and intervals from all pair values, of which `null` counts how many fall out.
Shift ranked(std::vector<double> pairs, const RankNull& null) {
    constexpr std::array levels{0.80, 0.90, 0.95};
    Shift result;
    const std::array intervals{&result.at80, &result.at90, &result.at95};
    const std::size_t last = pairs.size() - 1;
    std::array<std::optional<Cut>, levels.size()> cuts;
    std::vector<std::size_t> ranks{last / 2, pairs.size() / 2};
    for (std::size_t i = 0; i < levels.size(); ++i) {
        cuts[i] = null.cut(levels[i]);
        if (cuts[i]) ranks.insert(ranks.end(), {cuts[i]->outside, last - cuts[i]->outside});
    }
    place(pairs, ranks);
    result.value = 0.5 * (pairs[last / 2] + pairs[pairs.size() / 2]);
    for (std::size_t i = 0; i < levels.size(); ++i) {
        if (!cuts[i]) continue;
        const std::size_t outside = cuts[i]->outside;
        *intervals[i] =
            Interval{pairs[outside], pairs[last - outside], cuts[i]->level, null.exact()};
    }
    return result;
}

} // namespace

Shift shift(std::span<const double> before, std::span<const double> after) {
    if (before.empty() || after.empty()) return {};
    std::vector<double> differences;
    differences.reserve(before.size() * after.size());
    for (const double b : before) {
        for (const double a : after)
            differences.push_back(a - b);
    }
    return ranked(std::move(differences), RankNull::rank_sum(before.size(), after.size()));
}

Shift middle(std::span<const double> values) {
    if (values.empty()) return {};
    std::vector<double> averages;
    averages.reserve(values.size() * (values.size() + 1) / 2);
    for (std::size_t i = 0; i < values.size(); ++i) {
        for (std::size_t j = i; j < values.size(); ++j)
            averages.push_back(0.5 * (values[i] + values[j]));
    }
    return ranked(std::move(averages), RankNull::signed_rank(values.size()));
}

} // namespace measure
