#include "ball/head.hpp"

#include <array>
#include <cmath>
#include <cstddef>

namespace ball {

namespace {

struct Rung {
    double loft, mass; // degrees, kg
};
constexpr std::array<Rung, 6> common_masses{
    {{10, 0.200}, {15, 0.212}, {21, 0.235}, {34, 0.270}, {46, 0.290}, {56, 0.300}}};

} // namespace

unit::Kilograms common_head_mass(unit::Degrees loft) {
    if (loft.value <= common_masses.front().loft) return {common_masses.front().mass};
    for (std::size_t i = 1; i < common_masses.size(); ++i) {
        const Rung a = common_masses[i - 1], b = common_masses[i];
        if (loft.value <= b.loft)
            return {std::lerp(a.mass, b.mass, (loft.value - a.loft) / (b.loft - a.loft))};
    }
    return {common_masses.back().mass};
}

} // namespace ball
