// What did we do when? One line a lesson, the weeks between them in sight.
#pragma once

#include "page/block.hpp"
#include "page/course.hpp"

#include <string>

namespace page {

Section chronology_page(const figure::Easel& easel, const Course& course);

/// "kept, 28 May 2026", or why there is no answer yet.
std::string kept_words(const figure::Easel& easel, const Attended& lesson, bool last);
/// The day's verdict in a few words; without shots the looks at the hold.
std::string verdict_of_day(const figure::Easel& easel, const Story& story);

} // namespace page
