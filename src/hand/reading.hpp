// What can be read off a solved hold. No drawing here.
#pragma once

#include "hand/field.hpp"

namespace hand {

/// The player's eye: on the butt side, 72 degrees above the handle's axis, as with the club raised.
Vec players_eye();
Camera players_camera();

struct KnuckleView {
    double share = 0; ///< of the knuckle's cap that the eye sees
    Vec at;           ///< middle of what is seen, hand frame
};

/// A knuckle counts when at least this share of its cap is seen (a convention of ours).
inline constexpr double knuckle_share = .60;

KnuckleView knuckle_view(const Limbs& limbs, const Field& seen, int finger);
std::array<KnuckleView, fingers> knuckle_views(const Limbs& limbs,
                                               const Camera& camera = players_camera());
int knuckle_count(const std::array<KnuckleView, fingers>& views);

/// The V between thumb and forefinger, hand frame: its fork, and a point of the line that halves
/// it, towards the wrist.
struct Crease {
    Vec fork, end;
};
Crease v_crease(const Limbs& limbs);
/// On the picture the player sees: from the handle's butt direction to the V; positive = trail
/// side.
double v_degrees(const Limbs& limbs);
unit::VPoint v_point(double degrees);
/// The middle of the directions read as that point.
double v_middle(unit::VPoint point);

struct ButtContact {
    double gap = 0;   ///< heel pad to handle 12 mm behind the little knuckle, millimetres
    double angle = 0; ///< where round the handle, degrees: 0 target side, 90 upper side
    double share = 0; ///< of the girth under the pad that flesh touches
};
ButtContact butt_contact(const Limbs& limbs);

Contact phalanx_contact(const Limbs& limbs, int finger);

/// Angle between the handle and the outstretched fingers of an open hand, on its picture.
double lay_degrees(const Limbs& open_hand);

/// A point of the handle's flank: station along it, angle round it (0 = target side, 90 = upper
/// side).
Vec flank(const Limbs& limbs, double station, double degrees);

/// The one-finger check by statics: the weight beyond the forefinger against the pad above the
/// handle.
struct Balance {
    bool rests = false;
    double finger_station = 0, pad_station = 0; ///< along the handle, millimetres
    double pad_force = 0;                       ///< newtons the pad has to give
    double down =
        -120; ///< where the ground is, degrees round the handle (0 target side, 90 upper side)
};
Balance balance(const Limbs& one_finger);

} // namespace hand
