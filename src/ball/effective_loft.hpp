// The loft the face really presents, where it comes from, and which club of the bag that is.
#pragma once

#include "ball/estimate.hpp"
#include "ball/head.hpp"
#include "ball/opening.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <string>

namespace ball {

struct Club {
    std::string key; ///< "7i", as the bag writes it
    unit::Degrees loft, lie;
};

enum class LoftOrigin : std::uint8_t { measured, from_launch, from_face, unknown };

/// What is known of one shot or of one block's medians.
struct LoftEvidence {
    std::optional<unit::Degrees> loft, launch, attack, face;
    std::optional<unit::MetresPerSecond> club_speed, ball_speed;
    unit::Degrees lean; ///< shaft lean at impact, hands ahead positive; 0 when not known
};

struct EffectiveLoft {
    LoftOrigin origin = LoftOrigin::unknown;
    Estimate loft; ///< lower = upper = value unless estimated from launch; all 0 when unknown
};

/// In this order: measured; from launch, attack and club (else ball) speed; from the club's loft,
/// less the lean, and the face as a turn about the shaft.
EffectiveLoft effective_loft(const LoftEvidence& evidence, const Club& club, const Head& head);

/// The place of a loft on the ladder of a bag.
struct PlaysLike {
    std::size_t lower = 0, upper = 0; ///< indices into the bag; the same unless between two clubs
    bool beyond = false; ///< off the end of the ladder by more than a quarter of its last step
    double rung = 0;     ///< place on the ladder by loft, halves; 0 = least loft. A difference of
                         ///< rungs is a number of clubs.

    bool between() const { return lower != upper; }
};

/// The club whose loft that is, or the two it lies between (nearer the middle of the step than a
/// quarter of it). Among equal lofts the first of the bag counts. Empty for an empty bag.
/// Clubs are compared at their own lofts: an effective loft measured at impact is to be given with
/// the lean of a square strike added back, else a forward lean alone would read as a stronger club.
std::optional<PlaysLike> plays_like(unit::Degrees loft, std::span<const Club> bag);

} // namespace ball
