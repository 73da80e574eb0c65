// What `check` tells about the drills: what the printed rules would take, and what else fits.
#pragma once

#include "diag/finding.hpp"
#include "page/story.hpp"

namespace report {

/// Notes for the coach; none of it is printed on the sheet.
std::vector<diag::Finding> practice_notes(const page::Story& story, const words::Speaker& words,
                                          const std::vector<drills::Drill>& library);

} // namespace report
