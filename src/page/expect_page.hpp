// Page 6: what may happen, and when to worry?
#pragma once

#include "page/block.hpp"
#include "page/story.hpp"

namespace page {

/// The coach's words, what to expect, repair lines, when to stop, every caution, how to read the
/// words of this sheet, and lines for questions down to the foot of the page.
Section expect_page(const figure::Easel& easel, const Story& story);

} // namespace page
