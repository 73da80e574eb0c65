// Encoded pictures as Cairo surfaces. Internal to room output.
#pragma once

#include "ink/mark.hpp"
#include "output/cairo_handle.hpp"

namespace output {

/// With `keep_encoding` a JPEG is handed through unread, its surface has the right size only.
/// Throws CannotDraw when the bytes are not what `format` says.
Surface picture_surface(const ink::Picture& picture, bool keep_encoding);

} // namespace output
