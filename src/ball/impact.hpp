// The impact: one impulse between a free club head and a ball, and the launch that follows from it.
// Source: Penner 2001, American Journal of Physics 69:563, with a tangential restitution after
// Cross & Dewhurst 2018; start direction in the plane of face normal and club direction
// (Jorgensen, The Physics of Golf, 1999).
#pragma once

#include "ball/head.hpp"
#include "unit/quantity.hpp"

namespace ball {

/// How the head comes to the ball. A left-hander's is the same: right of target positive.
struct Delivery {
    unit::Degrees face, path;
    unit::Degrees attack; ///< up positive
    unit::Degrees loft;   ///< effective loft: elevation of the face normal
    unit::MetresPerSecond club_speed;
};

/// How the ball leaves. The spin axis is fixed in space; `axis` is its tilt from the horizontal,
/// positive curves right, and its horizontal part is square to the start direction.
struct Launch {
    unit::MetresPerSecond speed;
    unit::Degrees elevation;
    unit::Degrees start; ///< right of target positive
    unit::Rpm spin;
    unit::Degrees axis;
};

/// Launch of a centred strike. Beyond the grip that friction allows the ball slides.
Launch strike(const Delivery& delivery, const Head& head);

/// Angle between face normal and club direction.
unit::Degrees spin_loft(const Delivery& delivery);

/// Tilt of the spin axis in the plane square to the club direction: 0 for face equal to path.
unit::Degrees axis_tilt(const Delivery& delivery);

/// Share of the angle from club direction to face normal, in the plane of both, at which the ball
/// starts: 1 = along the face normal.
double plane_share(const Delivery& delivery, const Head& head);

/// The same seen from above, for a small face to path: always smaller, because the normal is
/// steeper than the club direction.
double horizontal_share(double plane_share, unit::Degrees spin_loft, unit::Degrees loft,
                        unit::Degrees attack);

/// The horizontal share that `strike` uses: the head's own where it has one.
double horizontal_share(const Delivery& delivery, const Head& head);

/// Least friction with which the ball does not slide.
double friction_needed(const Delivery& delivery, const Head& head);

} // namespace ball
