// Observations of one hold that do not fit together.
#pragma once

#include "diag/finding.hpp"
#include "hand/hand.hpp"

#include <string_view>

namespace report {

/// Warns at `span` of what the posed hand cannot show together. `facts` are of that hand, `seen` is
/// what was recorded, `when` the name of the hold in the record. What the record's own reader has
/// already told is not told again.
void doubt_hold(const hand::Facts& facts, const unit::Grip& seen, std::string_view when,
                diag::Span span, diag::Findings& findings);

} // namespace report
