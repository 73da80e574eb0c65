// Page 1: what is my one thing?
#pragma once

#include "page/block.hpp"
#include "page/story.hpp"

namespace page {

/// `drill_page` is the page on which the first drill stands.
Section one_thing(const figure::Easel& easel, const Story& story, std::size_t drill_page);

} // namespace page
