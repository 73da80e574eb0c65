// The page on why balls do what they do, for a lesson without shots.
#pragma once

#include "page/block.hpp"
#include "page/story.hpp"

#include <vector>

namespace page {

/// An invented impact for this hand, said to be one, what usually follows from it, and words of the
/// trade in two columns.
std::vector<Block> theory_blocks(const figure::Easel& easel);

} // namespace page
