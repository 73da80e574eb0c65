// Pictures that the coach brings: photographs of the hold, logo, signature.
#pragma once

#include "figure/easel.hpp"
#include "page/block.hpp"
#include "photo/photo.hpp"

#include <optional>
#include <string>
#include <vector>

namespace page {

/// All that a record and its house bring to a sheet beside words, ready for paper.
struct Pictures {
    std::optional<photo::Photo> before, after; ///< the student's own hold
    std::optional<photo::Photo> logo, signature;
    std::vector<std::string> contact; ///< lines at the foot of page 1
};

/// A picture as wide as `width` or as high as `height` allows, never with fewer than 100 dots an
/// inch; only its shown part is to be seen.
ink::Drawing print_of(const photo::Photo& photo, double width, double height);

/// The two photographs beside each other, as wide as the page, with their names and the caption.
Section photograph_page(const figure::Easel& easel, const Pictures& pictures,
                        const std::string& caption);

/// The logo at the right of a page's first line; moves nothing. Empty without a logo.
ink::Drawing logo_of(const Pictures& pictures, double width);

} // namespace page
