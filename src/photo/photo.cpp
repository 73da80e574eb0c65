#include "photo/photo.hpp"

#include "photo/formats.hpp"

#include <algorithm>
#include <cmath>

namespace photo {

namespace {

bool is_svg(std::string_view bytes) {
    const auto start = bytes.find_first_not_of(" \t\r\n\xEF\xBB\xBF");
    return start != bytes.npos && bytes[start] == '<' &&
           bytes.substr(0, 4096).find("<svg") != bytes.npos;
}

/// The formats of telephones that no printer takes (ISO/IEC 14496-12, the brand of "ftyp").
bool is_heif(std::string_view bytes) { return bytes.size() > 12 && bytes.substr(4, 4) == "ftyp"; }

/// Letters in an SVG would be set in fonts of this computer: the same file would print otherwise
/// elsewhere.
Photo svg_photo(std::string_view bytes) {
    if (bytes.find("<text") != bytes.npos)
        throw Fault{"has letters in it that need a font",
                    "turn them into outlines in the program that drew it (\"text to path\")"};
    return {"svg", std::make_shared<const std::string>(bytes), 0, 0, {}};
}

} // namespace

void expect_size(int width, int height, double most) {
    if (width <= largest_side && height <= largest_side &&
        static_cast<double>(width) * height <= most)
        return;
    throw Fault{"is " + std::to_string(width) + " by " + std::to_string(height) +
                    " dots, more than a page can show",
                "save it smaller: 2000 dots a side are plenty"};
}

ink::Rect shown_part(int width, int height, const Cut& cut) {
    return {cut.left * width, cut.top * height, (1 - cut.left - cut.right) * width,
            (1 - cut.top - cut.bottom) * height};
}

Photo photo_of(std::string_view bytes, const Cut& cut) {
    if (bytes.empty()) throw Fault{"is empty", "copy the picture again"};
    if (bytes.size() > largest_file)
        throw Fault{"has more than 64 megabytes", "save it smaller: 2000 dots a side are plenty"};
    if (bytes.starts_with("\xFF\xD8")) return jpeg_photo(bytes, cut);
    if (bytes.starts_with("\x89PNG\r\n\x1A\n")) return png_photo(bytes, cut);
    if (is_svg(bytes)) return svg_photo(bytes);
    if (is_heif(bytes))
        throw Fault{"is neither JPEG nor PNG but a telephone's own format",
                    "send it to yourself as JPEG: in the camera's settings that is the most "
                    "compatible format"};
    throw Fault{"is neither JPEG nor PNG", "open it in any picture program and save it as JPEG"};
}

double widest(const Photo& photo) { return photo.shown.width * 72 / least_dpi; }

} // namespace photo
