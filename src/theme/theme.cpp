#include "theme/style.hpp"

namespace theme {

namespace {

constexpr double mm = 72.0 / 25.4;

} // namespace

ink::Size size_of(Paper paper) {
    switch (paper) {
    case Paper::a4:
        return {210 * mm, 297 * mm};
    case Paper::letter:
        return {612, 792};
    case Paper::a5:
        return {148 * mm, 210 * mm};
    }
    return {};
}

ink::Rect Theme::live(bool right_hand) const {
    const ink::Size sheet = page();
    const double width = sheet.width - (binding + outer) * mm;
    const double height = sheet.height - (top + bottom) * mm;
    return {(right_hand ? binding : outer) * mm, top * mm, width, height};
}

Theme house_style(Paper paper, bool large_print) { return theme_of(house(), paper, large_print); }

} // namespace theme
