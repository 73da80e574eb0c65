#include "measure/spread.hpp"

#include "measure/order.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace measure {

Cloud cloud(std::span<const double> xs, std::span<const double> ys) {
    Cloud cloud;
    const std::size_t count = std::min(xs.size(), ys.size());
    if (count == 0) return cloud;
    const auto n = static_cast<double>(count);
    for (std::size_t i = 0; i < count; ++i) {
        cloud.x += xs[i] / n;
        cloud.y += ys[i] / n;
    }
    if (count < 2) return cloud;
    for (std::size_t i = 0; i < count; ++i) {
        const double dx = xs[i] - cloud.x, dy = ys[i] - cloud.y;
        cloud.xx += dx * dx / (n - 1);
        cloud.xy += dx * dy / (n - 1);
        cloud.yy += dy * dy / (n - 1);
    }
    return cloud;
}

Ellipse ellipse(const Cloud& cloud, double part) {
    const double half_sum = 0.5 * (cloud.xx + cloud.yy);
    const double half_gap = std::hypot(0.5 * (cloud.xx - cloud.yy), cloud.xy);
    const double scale = -2 * std::log1p(-part);
    Ellipse result{cloud.x, cloud.y, 0, 0, 0};
    result.major = std::sqrt(scale * (half_sum + half_gap));
    result.minor = std::sqrt(scale * std::max(0.0, half_sum - half_gap));
    result.angle = 0.5 * std::atan2(2 * cloud.xy, cloud.xx - cloud.yy) * 180 / std::numbers::pi;
    return result;
}

std::vector<double> modified_z(std::span<const double> values) {
    std::vector<double> scores(values.begin(), values.end());
    const double median = median_of(values);
    double mean = 0;
    for (double& score : scores) {
        score -= median;
        mean += std::abs(score) / static_cast<double>(values.size());
    }
    std::vector<double> residuals(scores);
    const double mad = robust_spread(residuals) / 1.4826;
    if (mad == 0 && mean == 0) return scores;
    const double unit = mad > 0 ? mad / 0.6745 : std::sqrt(std::numbers::pi / 2) * mean;
    for (double& score : scores)
        score /= unit;
    return scores;
}

} // namespace measure
