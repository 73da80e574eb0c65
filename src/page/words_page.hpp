// What does this mean, and is it safe? The words, how to read the pictures, the full cautions.
#pragma once

#include "page/block.hpp"

#include "figure/easel.hpp"

namespace page {

/// Every word of the house, in groups.
Section words_page(const figure::Easel& easel);

/// How to read the pictures, and every caution.
Section safety_page(const figure::Easel& easel);

} // namespace page
