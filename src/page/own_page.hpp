// Pages with nothing of the lesson on them: the coach's own text, and lines to write on.
#pragma once

#include "figure/easel.hpp"
#include "page/block.hpp"
#include "theme/style.hpp"

namespace page {

/// The coach's title and text, in the coach's letter, as many pages as they need.
Section own_page(const figure::Easel& easel, const theme::Planned& planned);

/// One page of ruled lines, for a side that would otherwise stay empty.
Section lines_page(const figure::Easel& easel);

} // namespace page
