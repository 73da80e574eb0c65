// The posed hands of a story: which views, before and after.
#pragma once

#include "diag/finding.hpp"
#include "page/story.hpp"

namespace report {

/// Poses what was recorded and draws the views the coach chose, else those that show what was seen.
/// Observations that no one hand can show together are findings at their hold.
void tell_hold(page::Story& story, diag::Findings& findings);

/// The view of that name as records and drills write it ("golfer's eye", "golfers eye").
std::optional<hand::View> view_named(std::string_view name);

/// The hold the coach wants: the recorded target, neutral where it is silent.
hand::Wish target_wish(const record::Lesson& lesson);

} // namespace report
