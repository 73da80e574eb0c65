// How a hold is described: what a coach looks at, each of which may not have been looked at.
// Left and right never appear here: lead and trail mean the same for both hands.
#pragma once

#include <cstdint>
#include <optional>

namespace unit {

/// Where the handle lies across the open lead hand.
enum class Lay : std::uint8_t { fingers, between, palm };

/// Where the V of thumb and forefinger points.
enum class VPoint : std::uint8_t {
    lead_side,
    chin,
    trail_eye,
    trail_shoulder,
    outside_trail_shoulder
};

/// Where the lead thumb sits on the handle, seen by the player.
enum class ThumbSide : std::uint8_t { lead_side, centre, trail_side };
enum class ThumbLength : std::uint8_t { short_thumb, middle, long_thumb };

/// Whether the heel pad sits on top of the handle or beside it.
enum class HeelPad : std::uint8_t { on_top, beside };

/// The one-finger check: the level club on the bent forefinger, under the heel pad.
enum class Balance : std::uint8_t { stays, falls };

/// How the trail hand joins the lead hand.
enum class Join : std::uint8_t { overlap, interlock, ten_finger };

/// One look at a hold. An empty value was not looked at.
struct Grip {
    std::optional<Lay> lay;
    std::optional<double> knuckles; ///< seen by the player, halves allowed, 0 to 4
    std::optional<VPoint> v;
    std::optional<ThumbSide> thumb_side;
    std::optional<ThumbLength> thumb_length;
    std::optional<HeelPad> heel_pad;
    std::optional<bool> gap; ///< true: a gap shows between pad and handle at the butt end
    std::optional<Balance> balance;
    std::optional<Join> join;
    std::optional<bool> square;        ///< fingers at right angles to the handle
    std::optional<bool> fingers_first; ///< fingers close before the pad goes on

    friend bool operator==(const Grip&, const Grip&) = default;
    bool any() const { return *this != Grip{}; }
};

} // namespace unit
