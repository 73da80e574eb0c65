// The rule that turns a change of the named aim into a verdict. See compare() for its text.
#pragma once

#include "measure/change.hpp"

namespace measure {

/// How far a value lies outside the wanted range; 0 inside.
double distance_from(const Wanted& wanted, double value);

/// Shots below, inside and above the wanted range.
struct Sides {
    std::size_t below = 0, inside = 0, above = 0;
};
Sides sides_of(const Wanted& wanted, std::span<const double> values);

/// Whether a quarter of the shots or more lie on each side of the range.
bool straddles(const Sides& sides);

/// +1 when larger values are wanted, -1 when smaller, 0 when the block is where it should be.
int wanted_way(const Wanted& wanted, double before_median, const Sides& before);

/// Reads every field of `change` but the verdict itself and `shots_that_would_tell`.
Verdict judge(const Change& change, const Wanted& wanted, int way);

/// Shots a side with which today's shift and interval would give a verdict; see compare().
std::optional<std::size_t> shots_needed(const Change& change, const Wanted& wanted, int way);

} // namespace measure
