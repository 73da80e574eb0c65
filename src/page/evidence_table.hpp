// Every measure in one row: a strip of its shots, typical values, and the change with its range.
#pragma once

#include "page/block.hpp"
#include "page/story.hpp"

#include <vector>

namespace page {

/// At most `rows` rows, the aim always among them.
/// The measures that the table lists: the aim, then in the order of what a coach talks about.
std::vector<unit::Measure> listed_measures(const Story& story, std::size_t rows);

Block evidence_table(const figure::Easel& easel, const Story& story, std::size_t rows);

} // namespace page
