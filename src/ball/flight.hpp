// The flight of a ball from launch to landing on level ground.
#pragma once

#include "ball/air.hpp"
#include "ball/impact.hpp"
#include "ball/lanes.hpp"
#include "unit/quantity.hpp"

#include <array>
#include <vector>

namespace ball {

/// A place on a flight, seen from the tee.
struct Place {
    unit::Metres along; ///< toward the target
    unit::Metres right; ///< of the target line
    unit::Metres up;
};

/// A model, not a measurement: balls alone differ by 9 m either way on a drive (Lyu, Kensrud, Smith
/// & Tosaya 2018, Proceedings 2(6):238).
struct Flight {
    unit::Metres carry;   ///< from the tee to the landing spot, straight over the ground
    unit::Metres along;   ///< the part of it along the target line
    unit::Metres offline; ///< the part of it square to the target line, right positive
    unit::Metres curve;   ///< landing spot from the start line, right positive
    unit::Metres apex;
    unit::Seconds time;
    unit::Degrees landing; ///< below the horizontal
    unit::MetresPerSecond landing_speed;
    unit::Rpm landing_spin;
    bool below_range = false;  ///< too slow for the published model: print no number of it
    std::vector<Place> places; ///< for drawing, tee and landing spot included
};

/// Within 0.1 mm of a step of 1 ms (step study in tests/ball/flight.cpp).
inline constexpr unit::Seconds fine_step{0.05};

/// Elevation at or below 0 gives a flight of no length. Flights longer than 30 s are cut there.
Flight fly(const Launch& launch, const Air& air, unit::Seconds step = fine_step);

/// A landing spot, for many flights at little cost.
struct Landing {
    unit::Metres carry, offline, curve;
};
inline constexpr std::size_t lane_count = 32;

/// Within 0.1 m of the fine step, from punch to drive to wedge (tests/ball/flight.cpp).
inline constexpr unit::Seconds coarse_step{0.6};

std::array<Landing, lane_count> land(const std::array<Launch, lane_count>& launches, const Air& air,
                                     unit::Seconds step = coarse_step);

/// The launch as vectors, and the air as forces, for the integrator.
Departure departure(const Launch& launch);
Forces forces(const Air& air);

} // namespace ball
