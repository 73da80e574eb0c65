// A link as a square code that a telephone's camera reads (QR code, ISO/IEC 18004).
#pragma once

#include "figure/easel.hpp"

namespace figure {

/// Side of one module, millimetres: from 0.5 on a 150 dpi print and a plain camera read it.
inline constexpr double code_module = 0.55;
/// Modules left white around the code (ISO/IEC 18004, 6.3.8).
inline constexpr int quiet_zone = 4;

/// The code in its quiet zone, black on white. Its message is the link. Empty for a link longer
/// than 150 characters.
ink::Drawing link_code(std::string_view link);

} // namespace figure
