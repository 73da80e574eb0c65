#include "figure/scale.hpp"

#include <algorithm>
#include <cmath>

namespace figure {

double pleasant_step(double range, int most_ticks) {
    const double raw = std::max(range, 1e-9) / std::max(1, most_ticks);
    const double power = std::pow(10.0, std::floor(std::log10(raw)));
    for (const double k : {1.0, 2.0, 5.0, 10.0})
        if (k * power >= raw * (1 - 1e-9)) return k * power;
    return 10 * power;
}

std::vector<double> ticks(double least, double most, double step) {
    std::vector<double> out;
    const double slack = step * 1e-6;
    for (double k = std::ceil((least - slack) / step); k * step <= most + slack; k += 1)
        out.push_back(k == 0 ? 0.0 : k * step);
    return out;
}

Scale fitted(std::span<const double> values, double from, double to, int most_ticks,
             double margin) {
    if (values.empty()) return {0, 1, from, to};
    const auto [low, high] = std::ranges::minmax(values);
    const double range = std::max(high - low, 1e-3 + std::abs(high) * 0.01);
    const double step = pleasant_step(range, most_ticks);
    const double least = low - range * margin, most = high + range * margin;
    return {std::floor(least / step * 2) * step / 2, std::ceil(most / step * 2) * step / 2, from,
            to};
}

Scale centred(std::span<const double> values, double from, double to, double at_least) {
    double reach = at_least;
    for (const double v : values)
        reach = std::max(reach, std::abs(v) * 1.06);
    const double step = pleasant_step(reach, 4);
    reach = std::ceil(reach / step * 2) * step / 2;
    return {-reach, reach, from, to};
}

} // namespace figure
