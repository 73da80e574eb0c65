// A hand picture as SVG, for looking at.
#pragma once

#include "hand/picture.hpp"

#include <string>

namespace look {

struct Inks {
    double print_width = 62; ///< millimetres of paper the picture takes
    bool anchors = false;
};

/// A group of that picture, `x`, `y` millimetres from the top left of the page.
std::string group(const hand::Picture& picture, double x, double y, const Inks& inks);
/// A page of groups.
std::string page(const std::string& groups, double width, double height);
/// Bytes the picture takes as PDF path operators with two decimals, before compression.
std::size_t path_bytes(const hand::Picture& picture);

} // namespace look
