// From Pango's lines to glyphs that need no Pango. Internal to room text.
#pragma once

#include "text/shaped.hpp"

#include <pango/pangocairo.h>

namespace text {

/// The glyphs of a line with its invisible characters left out.
std::shared_ptr<const ink::Shaped> shape(PangoLayoutLine* line, const char* layout_text);

} // namespace text
