// The impact backwards: what the head must have done for the ball to leave as it did.
// Estimates stand in for measurements; no verdict is ever built on one. They hold for a centred
// strike: an off-centre one can override the side of the curve.
#pragma once

#include "ball/air.hpp"
#include "ball/impact.hpp"

#include <optional>

namespace ball {

/// An estimated angle and the range in which it lies.
struct Estimate {
    unit::Degrees value, lower, upper;
};

/// The face from start direction and path: value with `share`, range with the published shares.
Estimate face_from_start(unit::Degrees start, unit::Degrees path, double share);

struct FaceAndPath {
    Estimate face, path;
};

/// Face and path from start direction and curve, at the loft, attack and speed of `delivery` (its
/// face and path are not read). The range covers the published shares and a lift that is off by
/// 12 % either way, the scatter of 13 balls in Lyu, Kensrud, Smith & Tosaya 2018. Empty when no
/// face to path within 30 degrees bends the ball that far.
std::optional<FaceAndPath> face_and_path(unit::Degrees start, unit::Metres curve,
                                         const Delivery& delivery, const Head& head,
                                         const Air& air);

/// Effective loft from launch elevation, for a square face. The range covers tangential
/// restitutions from 0.1 below the head's to 0.1 above. Empty when no loft from -5 to 75 degrees
/// launches the ball so.
std::optional<Estimate> loft_from_launch(unit::Degrees launch, unit::Degrees attack,
                                         unit::MetresPerSecond club_speed, const Head& head);

/// The club speed that gives that ball speed with a centred strike; the delivery's own is not read.
unit::MetresPerSecond club_speed_for(unit::MetresPerSecond ball_speed, const Delivery& delivery,
                                     const Head& head);

} // namespace ball
