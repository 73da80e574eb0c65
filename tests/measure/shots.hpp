// Invented shots for the tests: the same on every machine.
#pragma once

#include <cmath>
#include <cstddef>
#include <cstdint>
#include <numbers>
#include <random>
#include <vector>

namespace shots {

class Source {
  public:
    explicit Source(std::uint64_t seed)
        : generator_(seed) {}

    /// Above 0, below 1.
    double uniform() { return (static_cast<double>(generator_() >> 12) + 0.5) * 0x1p-52; }

    double normal() {
        return std::sqrt(-2 * std::log(uniform())) * std::cos(2 * std::numbers::pi * uniform());
    }

    /// Student's t of four degrees, scaled to a standard deviation of one.
    double heavy() {
        const double chi_square = -2 * std::log(uniform() * uniform());
        return normal() / std::sqrt(chi_square / 4) / std::numbers::sqrt2;
    }

    /// A heavy-tailed shot; one in twenty is a gross mishit, four standard deviations to one side.
    double shot() { return heavy() + (uniform() < 0.05 ? 4.0 : 0.0); }

    std::vector<double> normals(std::size_t count, double middle = 0, double sd = 1) {
        std::vector<double> values(count);
        for (double& value : values)
            value = middle + sd * normal();
        return values;
    }

    /// A block of shots about `middle`, the whole block off by a drift of that deviation.
    std::vector<double> block(std::size_t count, double middle, double drift) {
        const double offset = middle + drift * normal();
        std::vector<double> values(count);
        for (double& value : values)
            value = offset + shot();
        return values;
    }

  private:
    std::mt19937_64 generator_;
};

/// Rounded to a step, as a device prints it.
inline std::vector<double> rounded(std::vector<double> values, double per_unit) {
    for (double& value : values)
        value = std::round(value * per_unit) / per_unit;
    return values;
}

} // namespace shots
