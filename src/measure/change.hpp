// What changed: samples of one measure before and after, the change and its verdict.
// Every rule is the one of research users.md section 3.3, which the sheet prints.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace measure {

/// One block of one measure. All in the measure's own unit.
struct Sample {
    std::size_t count = 0;     ///< shots that count
    std::size_t set_aside = 0; ///< shots set aside by flag or rule
    double median = 0, mean = 0;
    double sd = 0;             ///< n - 1; 0 for fewer than two
    double spread = 0;         ///< 1.4826 times the median absolute deviation
    double lower = 0, upper = 0; ///< the middle half: quartiles (R type 7)
    double least = 0, most = 0;
    std::optional<double> drift; ///< last third's median minus first third's, from 9 shots on
};
Sample describe(std::span<const double> values, std::size_t set_aside = 0);

struct Interval {
    double lower = 0, upper = 0;
    double level = 0; ///< the level really held, at least the one asked for where that is possible
    bool exact = true; ///< false when the normal approximation was used (more than 60 a side)
};

/// Hodges-Lehmann shift after minus before, with rank intervals of 80, 90 and 95 %.
struct Shift {
    double value = 0;
    std::optional<Interval> at80, at90, at95; ///< absent when so few shots cannot hold that level
};
Shift shift(std::span<const double> before, std::span<const double> after);

enum class Verdict : std::uint8_t {
    changed,          ///< changed today
    probably,         ///< probably changed
    cannot_tell,      ///< cannot tell yet
    other_way,        ///< moved the other way
    past_square,      ///< moved past square (past the far side of the wanted range)
    about_same,       ///< about the same
    first_look,       ///< fewer than five a side
    tighter,          ///< two-sided misses drew together
    not_comparable,   ///< different club or set-up
    not_judged,       ///< this measure is not the named aim
};

/// What the coach wants of the aim, in the measure's own unit.
struct Wanted {
    double least = 0, most = 0;  ///< the wanted range
    double worth_having = 1;     ///< smallest change that matters
    bool named_before = true;    ///< said aloud before the after-shots
    bool comparable = true;      ///< same club and set-up on both sides
    double step = 0.1;           ///< reading step: floor of the spread
};

/// Everything the evidence page says about one measure.
struct Change {
    Sample before, after;
    Shift shift;
    double pooled_spread = 0;   ///< robust, with the reading step as its floor
    double spread_ratio = 0;    ///< after over before; 0 when before has none
    std::size_t nearer = 0;     ///< after-shots closer to the wanted range than the middle before-shot
    std::size_t inside_before = 0, inside_after = 0; ///< shots in the wanted range
    bool straddles = false;     ///< before missed the range on both sides
    bool already_moving = false; ///< the last third of before already sits where after starts
    std::optional<std::size_t> shots_that_would_tell; ///< a side, for "cannot tell yet"
    Verdict verdict = Verdict::not_judged;
};

/// `wanted` is empty for every measure but the named aim.
Change compare(std::span<const double> before, std::span<const double> after,
               const std::optional<Wanted>& wanted, std::size_t set_aside_before = 0,
               std::size_t set_aside_after = 0);

} // namespace measure
