// Flights seen from the side: how high, how far.
#pragma once

#include "figure/flight_above.hpp"

namespace figure {

/// The middle flight of each block over the ground. Height and distance have one scale; only a very
/// flat picture is drawn two or three times as tall, and says so. `height` is the most it takes
/// for the flights; labels stand below the ground.
ink::Drawing flight_side(const Easel& easel, const FlightInput& input, double width, double height);

} // namespace figure
