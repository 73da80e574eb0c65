#include "ball/air.hpp"

#include "ball/head.hpp"

#include <cmath>

namespace ball {

namespace {

constexpr double gas_constant = 287.05287; // J/(kg K), ISO 2533
constexpr double lapse = 0.0065;           // K/m
constexpr StandardAir sea_level{{288.15}, {101325.0}};
constexpr double earth_radius = 6356766.0; // m
constexpr double pressure_exponent = standard_gravity / (gas_constant * lapse);

unit::Kelvin temperature_of(const Air& air) {
    return air.temperature.value_or(standard_air(geopotential(air.height)).temperature);
}

unit::Pascal pressure_of(const Air& air) {
    return air.pressure.value_or(standard_air(geopotential(air.height)).pressure);
}

double viscosity(unit::Kelvin temperature) {
    const double t = temperature.value;
    return 1.458e-6 * t * std::sqrt(t) / (t + 110.4); // Sutherland, constants of ISO 2533
}

} // namespace

unit::Metres geopotential(unit::Metres geometric) {
    return geometric * (earth_radius / (earth_radius + geometric.value));
}

StandardAir standard_air(unit::Metres geopotential_height) {
    const unit::Kelvin t{sea_level.temperature.value - lapse * geopotential_height.value};
    return {t, sea_level.pressure * std::pow(t / sea_level.temperature, pressure_exponent)};
}

Density density(unit::Kelvin temperature, unit::Pascal pressure) {
    return {pressure.value / (gas_constant * temperature.value)};
}

Density density(const Air& air) { return density(temperature_of(air), pressure_of(air)); }

double reynolds(unit::MetresPerSecond speed, const Air& air) {
    return density(air).value * speed.value * 2 * ball_radius.value /
           viscosity(temperature_of(air));
}

} // namespace ball
