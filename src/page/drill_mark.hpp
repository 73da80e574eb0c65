// A pass mark on the ground in words: balls and steps, and the distance in the student's units.
#pragma once

#include "page/story.hpp"

#include <string>

namespace page {

/// The step that sets the gate up; empty for a window.
std::string mark_step(const GroundMark& mark, const words::Speaker& words);

/// The pass mark with its count, and from which shots it comes.
std::string mark_pass(const GroundMark& mark, const drills::Count& count,
                      const words::Speaker& words);

/// "5 balls" for the picture, and what the picture says then.
std::string mark_label(const GroundMark& mark, const words::Speaker& words);
std::string mark_alternative(const GroundMark& mark, const words::Speaker& words);

} // namespace page
