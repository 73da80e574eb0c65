// The posed hand: from what the coach saw to a pose, from the pose to facts and to pictures.
// Geometry is that of a left lead hand (a right-hander's); a left-hander's picture is the mirror.
#pragma once

#include "hand/picture.hpp"
#include "unit/grip.hpp"
#include "unit/quantity.hpp"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace hand {

enum class Build : std::uint8_t { large, small, child }; ///< proportions, not age or sex

/// What to pose. Values not looked at come from `target`, else neutral (two knuckles, fingers, pad
/// on).
struct Wish {
    unit::Grip seen;
    unit::Grip target;
    Build build = Build::large;
    bool glove = false;
    unit::Join join = unit::Join::overlap;
    double face_degrees = 0; ///< leading edge seen in the golfer's-eye view, right (open) positive
};

struct Contact {
    const char* finger = "";
    double first = 0, middle = 0,
           end = 0; ///< clearance of each phalanx from the handle, mm, negative = pressed in
};

/// What is true of the pose. Captions are written from these alone.
struct Facts {
    int knuckles = 0; ///< visible by the 60 % rule
    unit::Degrees v;  ///< V against the handle, trail side positive
    unit::VPoint v_points = unit::VPoint::chin;
    unit::Degrees lay;     ///< handle against the fingers, 90 = right angle
    double gap_mm = 0;     ///< between heel pad and handle at the butt end
    double held_share = 0; ///< share of the handle's girth under the pad that flesh touches
    std::vector<Contact> contacts;
    bool rests = false; ///< the level club stays on the bent forefinger under the pad (statics)
    bool contradiction = false;    ///< the record's own values cannot all be true
    std::string contradiction_key; ///< "knuckles-v", "lay-balance", … empty when none
};

class Pose; ///< the solved hand, handle and trail hand

enum class View : std::uint8_t {
    open_palm,     ///< the open lead hand with the handle laid across
    fingers_first, ///< fingers closed, pad not yet on
    golfers_eye,   ///< what the player sees: knuckles, V, leading edge
    butt_end,      ///< the end of the handle: pad on top, gap or none
    balance,       ///< the one-finger check
    joined,        ///< both hands, golfer's eye
    joined_front,  ///< both hands from the front: overlap, interlock or ten-finger
    thumb_short,   ///< golfer's eye with a short thumb
    thumb_long,    ///< golfer's eye with a long thumb
    close_up,      ///< golfer's eye without the club: the strip from weak to strong
};

std::shared_ptr<const Pose> pose(const Wish& wish);
Facts facts(const Pose& pose);
/// The picture of that view, a left lead hand. Same pose and view give the same picture to the bit.
Picture draw(const Pose& pose, View view);

/// The golfer's eye without the far end of the club, and what it lacks: the hand is the same for
/// every face angle.
Picture draw_without_club(const Pose& pose);
Picture with_club(Picture hand, double face_degrees);

/// Diameter of the handle's butt end, millimetres: what the grip card prints at true size.
double handle_diameter(Build build);

/// One thumbnail of the weak-to-strong strip: golfer's eye at that number of knuckles (0 to 4).
Picture strip(double knuckles, Build build, bool glove);

} // namespace hand
