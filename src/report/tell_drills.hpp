// Which drills the sheet bears: the coach's, else what comes after the last ones, else the
// program's proposal.
#pragma once

#include "report/tell.hpp"

namespace report {

/// What the lesson shows, as the printed rules look at it. Estimates are left out; angles count
/// from the middle of the wanted range.
drills::Observed observe(const page::Story& story);

/// The drill with the coach's number of knuckles filled in.
page::ChosenDrill chosen_drill(const drills::Drill& drill, const Inputs& in);

/// Fills `story.proposal` and `story.drills`. A named drill that the library does not have is a
/// finding.
void choose_drills(page::Story& story, const Inputs& in, diag::Findings& findings);

} // namespace report
