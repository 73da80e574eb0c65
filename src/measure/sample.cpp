#include "measure/change.hpp"
#include "measure/order.hpp"

#include <algorithm>
#include <cmath>

namespace measure {
namespace {

/// Sum with the rounding errors carried along (Neumaier 1974).
double sum_of(std::span<const double> values) {
    double sum = 0, lost = 0;
    for (const double value : values) {
        const double next = sum + value;
        lost += std::abs(sum) >= std::abs(value) ? (sum - next) + value : (value - next) + sum;
        sum = next;
    }
    return sum + lost;
}

/// Standard deviation in two passes; the second term takes back the rounding of the mean.
double deviation(std::span<const double> values, double mean) {
    if (values.size() < 2) return 0;
    const auto n = static_cast<double>(values.size());
    std::vector<double> residuals(values.begin(), values.end());
    for (double& value : residuals)
        value -= mean;
    const double left = sum_of(residuals);
    for (double& value : residuals)
        value *= value;
    return std::sqrt(std::max(0.0, (sum_of(residuals) - left * left / n) / (n - 1)));
}

std::optional<double> drift_of(std::span<const double> values) {
    const std::size_t third = values.size() / 3;
    if (third < 3) return std::nullopt;
    return median_of(values.last(third)) - median_of(values.first(third));
}

} // namespace

Sample describe(std::span<const double> values, std::size_t set_aside) {
    Sample sample;
    sample.count = values.size();
    sample.set_aside = set_aside;
    if (values.empty()) return sample;
    std::vector<double> sorted(values.begin(), values.end());
    std::sort(sorted.begin(), sorted.end());
    sample.median = quantile_of_sorted(sorted, 0.5);
    sample.lower = quantile_of_sorted(sorted, 0.25);
    sample.upper = quantile_of_sorted(sorted, 0.75);
    sample.least = sorted.front();
    sample.most = sorted.back();
    sample.mean = sum_of(values) / static_cast<double>(values.size());
    sample.sd = deviation(values, sample.mean);
    sample.drift = drift_of(values);
    for (double& value : sorted)
        value -= sample.median;
    sample.spread = robust_spread(sorted);
    return sample;
}

} // namespace measure
