// A single drawing as SVG.
#pragma once

#include "ink/mark.hpp"

#include <string>

namespace output {

/// Letters become outlines, so that the drawing looks the same without the fonts; what it says
/// stands in <title>. The same drawing gives the same bytes. Throws CannotDraw.
std::string svg(const ink::Drawing& drawing);

} // namespace output
