// Page 3: what is the evidence?
#pragma once

#include "page/block.hpp"
#include "page/story.hpp"

namespace page {

/// Shots, verdict and table; for a lesson without shots, the hold checks before and after.
Section evidence_page(const figure::Easel& easel, const Story& story);

} // namespace page
