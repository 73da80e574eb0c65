// What was set last time, what came back, what was kept, and what the repeat rule makes of it.
#pragma once

#include "report/tell.hpp"

namespace report {

/// Fills `story.last` and the retention of the last lesson's aim. A returned drill that the library
/// does not have is a finding.
void tell_last(page::Story& story, const Inputs& in, diag::Findings& findings);

/// Whether what the cold shots of `now` show can be held against before and after of `last`: the
/// same measure measured, the same club and hand, and a set-up that both call the same.
bool comparable(const Earlier& last, const record::Lesson& now);

} // namespace report
