// A second log, for days 15 to 28, when the record asks for one.
#pragma once

#include "page/block.hpp"
#include "page/story.hpp"

namespace page {

/// One page with the log of every drill of the sheet; no blocks when the record asks for none.
Section log_page(const figure::Easel& easel, const Story& story);

} // namespace page
