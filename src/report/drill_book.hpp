// All drills of a library for one hand, one a page.
#pragma once

#include "page/flow.hpp"
#include "page/story.hpp"

namespace report {

/// Contents, the cautions, then each drill's page with its id in the corner, in the order of the
/// library. `lesson` says hand, age, language and paper; nothing of a student is in the book.
page::Flowed drill_book(const figure::Easel& easel, const record::Lesson& lesson,
                        const std::vector<drills::Drill>& library);

} // namespace report
