// A pass mark on the ground from the student's own start directions.
#pragma once

#include "page/story.hpp"

namespace report {

/// Nothing for a drill without such a mark, when start directions were not measured, or when no
/// width fits the shots.
std::optional<page::GroundMark> ground_mark(const page::Story& story, drills::Mark kind);

} // namespace report
