// One lesson's sheet, from story to pages.
#pragma once

#include "page/flow.hpp"
#include "page/story.hpp"

namespace report {

/// Pages 1 to 8 in their order, always an even number. Faults are those of the flow and of the
/// program's own check of its pages.
page::Flowed lesson_report(const figure::Easel& easel, const page::Story& story);

} // namespace report
