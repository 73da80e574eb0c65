// How large a measured value may be before it is more likely a slip than a shot.
#pragma once

#include "unit/measure.hpp"

#include <string_view>

namespace shots {

struct Limits {
    double least = 0, most = 0; ///< SI or degrees
};

/// Bounds of a measure for any club. Common practice, no source: wide enough for every golfer.
Limits usual_limits(unit::Measure measure);

/// The fastest club speed to be expected of a club of that name ("7 iron", "driver"), m/s.
/// Common practice, no source: a little above the fastest professionals with that kind of club.
double fastest(std::string_view club);

} // namespace shots
