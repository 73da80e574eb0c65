// Where the phone stands when a student films themselves: seen from above, target up the page.
#pragma once

#include "figure/easel.hpp"

namespace figure {

/// Places 1 (facing the player) and 2 (behind the hands, looking along the line), fitted into the
/// box. A left-hander's is the mirror of a right-hander's. The message is set.
ink::Drawing filming(const Easel& easel, unit::Hand hand, double width, double height);

} // namespace figure
