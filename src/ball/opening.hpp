// Opening and closing the face by turning the club about its shaft, exactly, in three dimensions.
#pragma once

#include "unit/quantity.hpp"

namespace ball {

/// The club as it is soled square to the target.
struct Soled {
    unit::Degrees loft; ///< of the club itself, 0 to 75
    unit::Degrees lie;  ///< shaft above the horizontal seen along the target line, 40 to 85
    unit::Degrees lean; ///< shaft toward the target, hands ahead positive; takes loft off the face
};

/// Where the face points after the turn.
struct Opened {
    unit::Degrees face; ///< right of target positive
    unit::Degrees loft; ///< elevation of the face normal: the effective loft
};

/// Turns the club about its shaft, clockwise seen from the hands of a right-hander positive: the
/// face opens to the right. |turn| up to 90 degrees.
Opened turned(const Soled& club, unit::Degrees turn);

/// The turn nearest to none that points the face there; where no turn reaches it, the turn that
/// comes nearest. |face| below 90 degrees.
unit::Degrees turn_for(const Soled& club, unit::Degrees face);

/// Effective loft gained (closing: lost, negative) by turning the club until the face points there.
/// To first order cot(lie) degrees for each degree, whatever the loft.
unit::Degrees loft_added(const Soled& club, unit::Degrees face);

} // namespace ball
