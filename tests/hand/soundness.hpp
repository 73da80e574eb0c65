// What is wrong with a drawing, measured on its marks.
#pragma once

#include "hand/picture.hpp"

#include <string>
#include <vector>

namespace sound {

/// One line a fault: an open fill, a hole, a spur, a stray stroke, a line out of the window. Empty
/// when the drawing is sound.
std::vector<std::string> faults(const hand::Picture& picture);

} // namespace sound
