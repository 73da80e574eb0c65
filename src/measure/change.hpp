// What changed: samples of one measure before and after, the change and its verdict.
// Pure arithmetic on finite values, in shot order, in the measure's own unit; any count, none
// included. Every rule here is printed on the evidence page; its numbers are the constants below.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace measure {

/// The numbers of the rule, as the page prints them.
inline constexpr std::size_t shots_for_typical = 3;  ///< the middle of fewer is nobody's shot
inline constexpr std::size_t shots_for_probably = 5; ///< a side; fewer are a first look
inline constexpr std::size_t shots_for_changed = 8;  ///< a side
inline constexpr std::size_t shots_for_tighter = 15; ///< a side
inline constexpr double clear_of_zero = 0.3;         ///< pooled spreads that an interval must clear
inline constexpr double tighter_ratio = 0.5; ///< greatest spread ratio that counts as tighter
inline constexpr double side_missed = 0.25;  ///< part of the shots that makes a missed side
inline constexpr std::size_t most_shots_worth_telling = 100; ///< a side; more is no plan

/// One block of one measure. All in the measure's own unit.
struct Sample {
    std::size_t count = 0;     ///< shots that count
    std::size_t set_aside = 0; ///< shots set aside by flag or rule
    double median = 0, mean = 0;
    double sd = 0;               ///< n - 1; 0 for fewer than two
    double spread = 0;           ///< 1.4826 times the median absolute deviation
    double lower = 0, upper = 0; ///< the middle half: quartiles (R type 7)
    double least = 0, most = 0;
    std::optional<double> drift; ///< last third's median minus first third's, from 9 shots on
};
/// An empty block gives zeros.
Sample describe(std::span<const double> values, std::size_t set_aside = 0);

struct Interval {
    double lower = 0, upper = 0;
    double level = 0;  ///< the level really held, at least the one asked for
    bool exact = true; ///< false when the normal approximation was used (see rank.hpp)
};

/// A Hodges-Lehmann estimate with rank intervals of 80, 90 and 95 %. With ties the intervals
/// hold at least their level.
struct Shift {
    double value = 0;
    std::optional<Interval> at80, at90, at95; ///< absent when so few shots cannot hold that level
};
/// After minus before: the median of all pair differences (Hodges & Lehmann 1963), intervals from
/// the Mann-Whitney null distribution. Zero without intervals when a side is empty.
Shift shift(std::span<const double> before, std::span<const double> after);
/// The middle of one block, or of paired differences: the median of all pair averages, intervals
/// from the signed-rank null distribution.
Shift middle(std::span<const double> values);

enum class Verdict : std::uint8_t {
    changed,        ///< changed today
    probably,       ///< probably changed
    cannot_tell,    ///< cannot tell yet
    other_way,      ///< moved the other way
    past_square,    ///< moved past square (past the far side of the wanted range)
    about_same,     ///< about the same
    first_look,     ///< fewer than five a side
    tighter,        ///< two-sided misses drew together
    not_comparable, ///< different club or set-up
    not_judged,     ///< this measure is not the named aim
};

/// What the coach wants of the aim, in the measure's own unit. An open end is an infinity.
struct Wanted {
    double least = 0, most = 0; ///< the wanted range, least <= most
    double worth_having = 1;    ///< smallest change that matters
    bool named_before = true;   ///< said aloud before the after-shots
    bool comparable = true;     ///< same club and set-up on both sides
    double step = 0.1;          ///< reading step: floor of the spread
};

/// Everything the evidence page says about one measure.
struct Change {
    Sample before, after;
    Shift shift;
    /// Root mean square of both robust spreads, weighed by count less one; at least the reading
    /// step when this is the aim.
    double pooled_spread = 0;
    double spread_ratio = 0; ///< after over before; 0 when before has none
    /// After-shots closer to the wanted range than the middle before-shot; none when that one is
    /// inside.
    std::size_t nearer = 0;
    std::size_t inside_before = 0, inside_after = 0; ///< shots in the wanted range
    bool straddles =
        false; ///< a quarter of the before-shots or more missed on each side of the range
    /// Before lay where it should, and the typical shot after still does: nothing to move to.
    bool at_home = false;
    /// The first third of after lies a pooled spread or more from the first third of before, and
    /// the last third of before had already gone three quarters of that way (9 shots a side or
    /// more).
    bool already_moving = false;
    std::optional<std::size_t> shots_that_would_tell; ///< a side, for "cannot tell yet"
    Verdict verdict = Verdict::not_judged;
};

/// `wanted` is empty for every measure but the named aim.
///
/// The verdict, first line that fits:
///  not the aim                                     not judged
///  different club or set-up                        not comparable
///  not named before the after-shots                not judged
///  fewer than 5 a side                             first look
///  before straddles the range                      tighter: 15 a side, robust spread and
///                                                  standard deviation both at most halved;
///                                                  else cannot tell
///  8 a side, 95 % interval beyond 0.3 pooled spreads the wanted way, shift worth having
///                                                  changed
///  the same the other way                          moved the other way
///  90 % interval within the worth-having size      about the same
///  80 % interval beyond 0.3 pooled spreads the wanted way
///                                                  probably
///  else                                            cannot tell
/// Changed and probably become "past square" when the after median lies beyond the far side.
///
/// The wanted way leads from the before median into the range. When that median is inside already,
/// it leads away from the one side on which a quarter or more of the shots missed. When no side was
/// missed so often, there is nothing to gain: a change that leaves the range is "the other way".
///
/// `shots_that_would_tell` takes the shift and the interval of today as true: with so many a side
/// there are about four chances in five that the rule says changed (or the other way), or, for a
/// shift under the worth-having size, about the same. Absent when that takes more than 100.
Change compare(std::span<const double> before, std::span<const double> after,
               const std::optional<Wanted>& wanted, std::size_t set_aside_before = 0,
               std::size_t set_aside_after = 0);

} // namespace measure
