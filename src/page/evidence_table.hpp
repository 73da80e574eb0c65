// Every measure in one row: a strip of its shots, typical values, and the change with its range.
#pragma once

#include "page/block.hpp"
#include "page/story.hpp"

namespace page {

Block evidence_table(const figure::Easel& easel, const Story& story);

} // namespace page
