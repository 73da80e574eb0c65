// The coach's wanted hold, posed for a drill's picture.
#pragma once

#include "page/drill_page.hpp"

namespace report {

/// Draws the hold that a drill trains at the size of its picture. Both must outlive the function.
page::HoldPicture posed_hands(const figure::Easel& easel, const page::Story& story);

} // namespace report
