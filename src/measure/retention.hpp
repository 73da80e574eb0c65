// What stayed: a cold test against before and after.
#pragma once

#include "measure/change.hpp"

namespace measure {

inline constexpr double kept_part = 0.75;     ///< this part or more is kept
inline constexpr double not_kept_part = 0.25; ///< this part or less is not kept yet
inline constexpr double part_level = 0.80;    ///< level of the range of the part

inline constexpr double spell_drift = 0.3; ///< spreads; the same as the verdict's clear part

enum class Kept : std::uint8_t { kept, partly, not_yet, cannot_tell, first_look, past };

struct Retention {
    Sample cold;
    double part =
        0; ///< 0 = back at before, 1 = all of the change is still there; 0 without a change
    /// Of the part, 80 %, by resampling with a fixed seed; absent when there was no clear change to
    /// keep a part of, or fewer than five shots in a block.
    std::optional<Interval> range;
    Kept kept = Kept::first_look;
};
/// The part of the change (before to after medians) that the cold shots still show.
///
/// The verdict, first line that fits:
///  fewer than 5 shots in a block                       first look
///  the 80 % rank interval of the change holds zero, or the change was not worth having
///                                                      cannot tell (no range)
///  part 3/4 or more, range above 1/4, and the cold median at least worth having from before
///                                                      kept
///  part 1/4 or less, and range below 3/4               not yet
///  part between, range above 0 and below 1             partly
///  else                                                cannot tell
/// A part above 1 has moved on the same way; only the form below judges whether that is past the
/// wanted range.
///
/// The range takes the 10 % and 90 % quantiles of 2,000 resamples of all three blocks. Each drawn
/// value is moved a little (uniformly, with a deviation of spread over root of count): medians of
/// few shots would repeat themselves and the range come out too narrow. Each block is moved as a
/// whole with a deviation of `spell_drift` of its spread, because spells differ even when nothing
/// changed. A resample whose change vanishes or turns round counts as an extreme part, so the range
/// opens; when an end is lost that way, there is none.
Retention retained(std::span<const double> before, std::span<const double> after,
                   std::span<const double> cold, double worth_having);

/// The same, where the aim is known: what would be kept is `past` when the cold median lies beyond
/// the far side of the wanted range, the side to which the change went.
Retention retained(std::span<const double> before, std::span<const double> after,
                   std::span<const double> cold, const Wanted& wanted);

} // namespace measure
