// Photographs and logos from a coach's files: upright, cropped, and rid of all that a camera writes
// into them.
#pragma once

#include "ink/mark.hpp"

#include <memory>
#include <string>
#include <string_view>

namespace photo {

/// What is cut off at each side, parts of the upright picture's width and height.
struct Cut {
    double left = 0, top = 0, right = 0, bottom = 0;
};

/// A picture ready for paper. Of JPEG and PNG nothing is left but the dots.
struct Photo {
    std::string format; ///< "jpeg", "png" or "svg"
    std::shared_ptr<const std::string> bytes;
    int width = 0, height = 0; ///< dots of `bytes`; 0 for SVG, which has none
    ink::Rect shown;           ///< what of it is to be seen, dots
};

/// Why a file cannot be printed: a clause to stand behind its name, and the way out.
struct Fault {
    std::string what, hint;
};

inline constexpr int largest_side = 20'000;             ///< dots
inline constexpr double largest_area = 150e6;           ///< dots of a JPEG
inline constexpr double largest_png = 50e6;             ///< dots of a PNG, which is unpacked
inline constexpr std::size_t largest_file = 64'000'000; ///< bytes
inline constexpr double least_dpi = 100; ///< below this many dots an inch a picture is mush

/// JPEG is turned upright as its EXIF orientation says and cropped on whole blocks, both without
/// decoding (libjpeg-turbo); PNG is unpacked and packed anew (libpng). Throws Fault.
Photo photo_of(std::string_view bytes, const Cut& cut = {});

/// The widest that a photograph may be printed, points.
double widest(const Photo& photo);

/// EXIF orientation 1 to 8 (CIPA DC-008, tag 0x0112) of a JPEG; 1 when it says none.
int orientation_of(std::string_view jpeg);

} // namespace photo
