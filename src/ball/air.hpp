// The air a ball flies through: density by height, temperature and pressure, and the wind.
// Source: ISO 2533:1975 (standard atmosphere), troposphere; viscosity by Sutherland's law.
#pragma once

#include "unit/quantity.hpp"

#include <optional>

namespace ball {

using Density = unit::Quantity<struct density_tag>; ///< kg/m^3

/// Wind over flat ground, the same at every height.
struct Wind {
    unit::MetresPerSecond along;  ///< positive: from behind the player
    unit::MetresPerSecond across; ///< positive: blowing to the right
};

/// What is known of the air. What is not given is the standard atmosphere's value at that height.
struct Air {
    unit::Metres height; ///< of the ground above sea level, -500 to 5000 m
    std::optional<unit::Kelvin> temperature;
    std::optional<unit::Pascal> pressure; ///< at the place itself, not reduced to sea level
    Wind wind;
};

struct StandardAir {
    unit::Kelvin temperature;
    unit::Pascal pressure;
};

/// The geopotential height of a geometric height (ISO 2533, nominal earth radius 6 356 766 m).
unit::Metres geopotential(unit::Metres geometric);

/// Temperature and pressure at a geopotential height, up to 11 km.
StandardAir standard_air(unit::Metres geopotential_height);

/// Density of dry air of that temperature and pressure.
Density density(unit::Kelvin temperature, unit::Pascal pressure);
Density density(const Air& air);

/// Reynolds number of a ball at that speed through that air.
double reynolds(unit::MetresPerSecond speed, const Air& air);

} // namespace ball
