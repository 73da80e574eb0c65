// Page 4: why did the ball do that?
#pragma once

#include "page/block.hpp"
#include "page/story.hpp"

namespace page {

/// Face against path, what the ball did and the coach's reason; for a lesson without shots, the
/// words of the trade drawn for this hand.
Section why_page(const figure::Easel& easel, const Story& story);

} // namespace page
