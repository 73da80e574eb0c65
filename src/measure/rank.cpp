#include "measure/rank.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace measure {
namespace {

__extension__ typedef unsigned __int128 Wide;

/// The counts are computed modulo 2^128, so partial products may wrap without harm.
constexpr double most_bits = 126;

double bits_of_arrangements(std::size_t m, std::size_t n) {
    double bits = 0;
    for (std::size_t i = 1; i <= m; ++i) {
        bits += std::log2(static_cast<double>(n + i)) - std::log2(static_cast<double>(i));
    }
    return bits;
}

/// Coefficients up to `half` of the Gaussian binomial (m + n over m): factor by factor,
/// times (1 - q^(n+i)), over (1 - q^i). Each is the number of orders that give that U.
std::vector<Wide> rank_sum_counts(std::size_t m, std::size_t n, std::size_t half) {
    std::vector<Wide> counts(half + 1, 0);
    counts[0] = 1;
    for (std::size_t i = 1; i <= m; ++i) {
        for (std::size_t u = half + 1; u-- > n + i;)
            counts[u] -= counts[u - n - i];
        for (std::size_t u = i; u <= half; ++u)
            counts[u] += counts[u - i];
    }
    return counts;
}

/// Number of sets of ranks 1..n with each sum up to `half`.
std::vector<Wide> signed_rank_counts(std::size_t n, std::size_t half) {
    std::vector<Wide> counts(half + 1, 0);
    counts[0] = 1;
    for (std::size_t rank = 1; rank <= n; ++rank) {
        for (std::size_t v = half + 1; v-- > rank;)
            counts[v] += counts[v - rank];
    }
    return counts;
}

/// Running sums of the lower half over the total, which symmetry gives.
std::vector<double> cumulative(const std::vector<Wide>& counts, std::size_t top) {
    std::vector<Wide> sums(counts);
    for (std::size_t i = 1; i < sums.size(); ++i)
        sums[i] += sums[i - 1];
    const Wide total = 2 * sums.back() - (top % 2 == 0 ? counts.back() : Wide{0});
    std::vector<double> parts;
    parts.reserve(sums.size());
    for (const Wide sum : sums)
        parts.push_back(static_cast<double>(sum) / static_cast<double>(total));
    return parts;
}

} // namespace

double normal_at_most(double z) { return 0.5 * std::erfc(-z / std::numbers::sqrt2); }

double normal_quantile(double part) {
    double low = -40, high = 40;
    for (int i = 0; i < 100; ++i) {
        const double middle = 0.5 * (low + high);
        (normal_at_most(middle) < part ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

RankNull RankNull::rank_sum(std::size_t m, std::size_t n) {
    RankNull null;
    null.top_ = m * n;
    const auto size = static_cast<double>(m + n);
    null.sd_ = std::sqrt(static_cast<double>(m * n) * (size + 1) / 12);
    if (bits_of_arrangements(std::min(m, n), std::max(m, n)) < most_bits) {
        const auto counts = rank_sum_counts(std::min(m, n), std::max(m, n), null.top_ / 2);
        null.lower_half_ = cumulative(counts, null.top_);
    }
    return null;
}

RankNull RankNull::signed_rank(std::size_t n) {
    RankNull null;
    null.top_ = n * (n + 1) / 2;
    const auto size = static_cast<double>(n);
    null.sd_ = std::sqrt(size * (size + 1) * (2 * size + 1) / 24);
    if (size <= most_bits) {
        null.lower_half_ = cumulative(signed_rank_counts(n, null.top_ / 2), null.top_);
    }
    return null;
}

double RankNull::at_most(std::size_t value) const {
    if (value >= top_) return 1;
    if (!exact()) {
        const double distance = static_cast<double>(value) + 0.5 - 0.5 * static_cast<double>(top_);
        return normal_at_most(distance / sd_);
    }
    if (value < lower_half_.size()) return lower_half_[value];
    return 1 - lower_half_[top_ - value - 1];
}

std::optional<Cut> RankNull::cut(double level) const {
    const double outside = 1 - level + 1e-12; // a level held exactly is held
    if (top_ == 0 || 2 * at_most(0) > outside) return std::nullopt;
    std::size_t held = 0, missed = top_ / 2 + 1;
    while (missed - held > 1) {
        const std::size_t middle = held + (missed - held) / 2;
        (2 * at_most(middle) <= outside ? held : missed) = middle;
    }
    return Cut{held, 1 - 2 * at_most(held)};
}

} // namespace measure
