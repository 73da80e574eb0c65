#include "measure/order.hpp"

#include <algorithm>
#include <cmath>

namespace measure {

double quantile_of_sorted(std::span<const double> sorted, double part) {
    if (sorted.empty()) return 0;
    const double place = part * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    if (below + 1 >= sorted.size()) return sorted.back();
    return sorted[below] +
           (place - static_cast<double>(below)) * (sorted[below + 1] - sorted[below]);
}

double median_in_place(std::span<double> values) {
    if (values.empty()) return 0;
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1) return *middle;
    return 0.5 * (*std::max_element(values.begin(), middle) + *middle);
}

double median_of(std::span<const double> values) {
    std::vector<double> copy(values.begin(), values.end());
    return median_in_place(copy);
}

double robust_spread(std::span<double> residuals) {
    for (double& value : residuals)
        value = std::abs(value);
    return 1.4826 * median_in_place(residuals);
}

} // namespace measure
