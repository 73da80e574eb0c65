// One lesson's sheet, from story to pages.
#pragma once

#include "page/flow.hpp"
#include "page/story.hpp"
#include "theme/style.hpp"

namespace report {

using Plan = std::vector<theme::Planned>;

/// The pages of the plan in their order, always an even number. Faults are those of the flow and of
/// the program's own check of its pages.
page::Flowed lesson_report(const figure::Easel& easel, const page::Story& story,
                           const Plan& plan = theme::house().pages);

} // namespace report
