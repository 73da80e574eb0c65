// What came back from the last sheet against that sheet.
#pragma once

#include "diag/finding.hpp"
#include "record/lesson.hpp"

namespace cli {

/// Warns of more days of practice than lie between the two lessons, and of a drill that `last` did
/// not name. Where `last` left the drills to the program, any may have come back.
void doubt_returned(const record::Lesson& now, const record::Lesson& last,
                    diag::Findings& findings);

} // namespace cli
