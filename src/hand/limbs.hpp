// One hand solved on a handle: joints in the hand frame, and the way into the grip frame.
// Grip frame: u along the handle from butt to club head, t towards the target, n the upper side of
// the handle (u x t = n), origin at the butt.
#pragma once

#include "hand/anatomy.hpp"

namespace hand {

/// A tapered round rod, hand frame.
struct Handle {
    Vec butt, along; ///< centre of the butt end, unit direction
    double radius = 12, taper = 0.0125, length = 270;

    double radius_at(double s) const { return radius - taper * s; }
    double station(Vec p) const { return dot(p - butt, along); }
    /// Free space between the flank and a ball; negative = pressed in.
    double clear(Vec p, double ball) const;
};

/// What a hold is made of; the solver does the rest.
struct Hold {
    double lay = 0;   ///< 0 handle in the fingers .. 1 across the palm
    double slant = 0; ///< of the laid handle to the open fingers, degrees from a right angle
    double turn = 0;  ///< degrees of the hand about the handle, weak negative, strong positive
    double clock =
        12.5; ///< where the thumb pad sits: 12 the upper side, 13 = 30 degrees to the trail side
    double reach = 0.4; ///< 0 short .. 1 long thumb
    double heel = 1;    ///< 1 pad over the butt, 0 butt beside the pad
    double gap = 0;     ///< lift of the handle off the pad at the little finger's ray, millimetres
    double closure = 1; ///< 0 open .. 1 closed
    double spread = 1, lean = 0;   ///< fan of the open fingers; all of them sideways, degrees
    bool open = false;             ///< flat hand, handle laid across it
    bool only_index = false;       ///< the other fingers stay nearly straight
    bool fingers_late = false;     ///< all of them still stand off, nearly straight
    bool thumb_free = false;       ///< thumb stands off the handle
    Vec free_thumb{.15, .55, .75}; ///< heights of a free thumb's three bones
    double lift = 0; ///< all of the handle off the palm (a thumb lies between), millimetres
    Vec forearm{-.75, .5, -.3}; ///< wished direction, grip frame; zero = straight on
    double bend_share = .9;     ///< of the wished bend
    double stick_out = 24;      ///< butt beyond the little finger's ray, millimetres
    double index_aside = 0,
           little_aside = 0; ///< middle joint moved along the handle, to the head, millimetres
};

struct PosedFinger {
    std::array<Vec, 4> joint;    ///< knuckle, two joints, centre of the tip
    std::array<Vec, 3> bone;     ///< directions
    std::array<double, 3> angle; ///< flexion, degrees
    Vec axis;                    ///< flexion axis
};

struct Limbs {
    Anatomy body;
    Hold hold;
    Handle handle;
    std::array<Vec, fingers> knuckle;
    std::array<PosedFinger, fingers> finger;
    std::array<Vec, 4> thumb; ///< saddle joint, two joints, centre of the tip
    Vec thumb_up;             ///< out of the nail
    Rows grip;                ///< u, t, n in the hand frame
    Vec origin;               ///< of the grip frame: where the solved handle's butt is
    Vec wrist, arm;           ///< where the forearm starts, its direction (hand frame)
    Vec carpus;               ///< direction of the carpus, half way between
    bool reversed = false;    ///< a right hand: t mirrored in the grip frame
    double shift = 0;         ///< along u, for the hand further down the handle

    Vec to_grip(Vec p) const;
    Vec direction(Vec d) const;
    Vec from_grip(Vec p) const;
};

double clear_of(const Handle& handle, Vec a, Vec b, double ra, double rb, double from = 0,
                int n = 13);

/// Solves a hold: handle into the hand, fingers closed onto it, thumb laid on, pressed 1 mm into
/// the flesh. Always returns finite joints.
Limbs solve(const Anatomy& body, const Hold& hold);

} // namespace hand
