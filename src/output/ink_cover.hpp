// How much of a sheet a printer covers.
#pragma once

#include "page/book.hpp"

namespace output {

/// The part of the paper that bears ink on a mono printer, 0 to 1: the mean of 1 - grey level at
/// 60 dots an inch, grey as Rec. 709 weighs it. Throws CannotDraw.
double ink_cover(const page::Sheet& sheet);

} // namespace output
