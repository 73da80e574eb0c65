// Page 8: what happened before, and what next?
#pragma once

#include "page/block.hpp"
#include "page/story.hpp"

namespace page {

/// Lessons so far, what was planned and done, cold tests, a box for the next coach, the words used,
/// the rule behind the verdict's words where there is room, and lines for notes down to the foot of
/// the page.
Section next_page(const figure::Easel& easel, const Story& story);

} // namespace page
