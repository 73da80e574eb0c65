// Marks as PNG.
#pragma once

#include "ink/mark.hpp"

#include <string>

namespace output {

/// On white, `dots_per_inch` from 1 to 1200. Throws CannotDraw.
std::string png(const std::vector<ink::Mark>& marks, ink::Size size, double dots_per_inch);

} // namespace output
