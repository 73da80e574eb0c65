// What every page bears around its content: whose it is, which lesson, which page of how many.
#pragma once

#include "page/flow.hpp"
#include "page/story.hpp"

namespace page {

/// Running head, foot and, where the style asks for them, punch marks. The easel must outlive it.
Furniture furniture(const figure::Easel& easel, const record::Lesson& lesson);

} // namespace page
