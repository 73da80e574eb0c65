// Bones and flesh of one hand as tables. Frame: x radial (thumb), y distal, z dorsal, origin at the
// wrist centre, millimetres; a left hand in a right-handed frame.
#pragma once

#include "hand/hand.hpp"
#include "hand/vec.hpp"

#include <array>

namespace hand {

enum Finger : int { index_finger, middle_finger, ring_finger, little_finger };
inline constexpr int fingers = 4;

/// One finger with its metacarpal.
struct Ray {
    Vec base, knuckle;             ///< ends of the metacarpal
    std::array<double, 3> phalanx; ///< lengths, the last one to the tip of the flesh
    std::array<double, 4> radius;  ///< at the knuckle, the two joints, the tip
    double fan;                    ///< degrees, radial positive, of the open hand
    double head;                   ///< radius of the metacarpal head
    double cap, cap_lift,
        cap_tilt; ///< the bump of the knuckle: radius, dorsal offset, lean in degrees
    Vec cup;      ///< how the head moves when the hand closes
};

struct Anatomy {
    std::array<Ray, fingers> ray;
    Vec saddle;                  ///< joint at the root of the thumb
    std::array<double, 3> thumb; ///< metacarpal, phalanx, end phalanx to the tip
    std::array<double, 4> thumb_radius;
    double across = 1, along = 1;       ///< size against the table below: widths, lengths
    double handle_radius, handle_taper; ///< at the butt; per millimetre

    Vec at(double x, double y, double z) const { return {x * across, y * along, z * across}; }
    double wide(double r) const { return r * across; }
    double hand_length() const;  ///< wrist to the tip of the middle finger
    double hand_breadth() const; ///< over the knuckles
};

Anatomy anatomy(Build build);

} // namespace hand
