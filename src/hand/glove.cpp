#include "hand/skin.hpp"

namespace hand {

void add_glove_lines(Plate&, const Limbs&) {}

} // namespace hand
