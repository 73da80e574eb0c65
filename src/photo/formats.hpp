// One reader a format. Internal to photo.
#pragma once

#include "photo/photo.hpp"

namespace photo {

Photo jpeg_photo(std::string_view bytes, const Cut& cut);
Photo png_photo(std::string_view bytes, const Cut& cut);

/// Throws Fault for a picture with too many dots.
void expect_size(int width, int height, double most);
ink::Rect shown_part(int width, int height, const Cut& cut);

} // namespace photo
