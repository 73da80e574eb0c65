// From Pango's lines to glyphs that need no Pango. Internal to room text.
#pragma once

#include "text/shaped.hpp"

#include <pango/pangocairo.h>

namespace text {

struct SetShape {
    std::shared_ptr<const ink::Shaped> shaped;
    double narrowed = 0; ///< points that it is shorter than Pango measured
};

/// The glyphs of a line with its invisible characters left out and the spaces before units small.
SetShape shape(PangoLayoutLine* line, const char* layout_text);

} // namespace text
