// What stayed: a cold test against before and after.
#pragma once

#include "measure/change.hpp"

namespace measure {

enum class Kept : std::uint8_t { kept, partly, not_yet, cannot_tell, first_look };

struct Retention {
    Sample cold;
    double part = 0;              ///< 0 = back at before, 1 = all of the change is still there
    std::optional<Interval> range; ///< of the part, by resampling with a fixed seed
    Kept kept = Kept::first_look;
};
/// The part of the change (before to after medians) that the cold shots still show.
Retention retained(std::span<const double> before, std::span<const double> after,
                   std::span<const double> cold, double worth_having);

} // namespace measure
