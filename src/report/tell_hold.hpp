// The posed hands of a story: which views, before and after.
#pragma once

#include "page/story.hpp"

namespace report {

/// Poses what was recorded and draws the views the coach chose, else those that show what was seen.
void tell_hold(page::Story& story);

} // namespace report
