// Every measure in one row: a strip of its shots, typical values, and the change with its range.
#pragma once

#include "page/block.hpp"
#include "page/story.hpp"

namespace page {

/// At most `rows` rows, the aim always among them.
Block evidence_table(const figure::Easel& easel, const Story& story, std::size_t rows);

} // namespace page
