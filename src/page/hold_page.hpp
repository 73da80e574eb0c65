// Page 2: how should I hold it?
#pragma once

#include "page/block.hpp"
#include "page/story.hpp"

namespace page {

Section hold_page(const figure::Easel& easel, const Story& story);

/// The six looks as a table: before, after, and empty boxes for the cold test.
Block checklist(const figure::Easel& easel, const Story& story);

} // namespace page
