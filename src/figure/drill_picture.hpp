// Small pictures of how a drill is set up: from above with the target up the page, or from the
// side.
#pragma once

#include "figure/easel.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace figure {

/// Names of all pictures, in the order of the drill library.
std::vector<std::string_view> drill_pictures();

bool has_drill_picture(std::string_view name);

/// Other words for a picture whose set-up was measured for one student.
struct PictureNote {
    std::string label, message;
};

/// The picture fitted into the box, its message set. A left-hander's is the mirror of a
/// right-hander's; words in it are never mirrored. A `ready` drawing (a posed hand) that fits the
/// box stands in the middle of it instead. An unknown name gives an empty drawing of no size.
ink::Drawing drill_picture(const Easel& easel, std::string_view name, unit::Hand hand, double width,
                           double height, const ink::Drawing* ready = nullptr,
                           const PictureNote* note = nullptr);

} // namespace figure
