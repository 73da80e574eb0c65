// What came back from the last sheet against that sheet.
#pragma once

#include "diag/finding.hpp"
#include "drills/drill.hpp"
#include "record/lesson.hpp"

#include <vector>

namespace cli {

/// Warns of more days of practice than lie between the two lessons, of a drill that `last` did not
/// name, and of a count that is not by the tries of its log. Where `last` left the drills to the
/// program, any may have come back.
void doubt_returned(const record::Lesson& now, const record::Lesson& last,
                    const std::vector<drills::Drill>& library, diag::Findings& findings);

/// By how many tries a day the log of that drill counts; 0 when nobody knows.
int tries_of_log(const record::DrillWish& wish, const std::vector<drills::Drill>& library);

} // namespace cli
