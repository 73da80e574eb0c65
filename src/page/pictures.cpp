#include "page/pictures.hpp"

#include "page/log_notes.hpp"
#include "page/parts.hpp"

#include <algorithm>

namespace page {

using figure::Easel;
using theme::Text;

namespace {

constexpr double logo_height = 15 * figure::mm, logo_width = 48 * figure::mm;

} // namespace

ink::Drawing print_of(const photo::Photo& photo, double width, double height) {
    const ink::Rect& part = photo.shown;
    if (part.width <= 0 || part.height <= 0) return {};
    double k = std::min(width / part.width, height / part.height);
    if (photo.format != "svg") k = std::min(k, 72 / photo::least_dpi);
    ink::Drawing out;
    out.size = {part.width * k, part.height * k};
    const ink::Rect frame{0, 0, out.size.width, out.size.height};
    const ink::Rect whole{-part.x * k, -part.y * k, photo.width * k, photo.height * k};
    out.add(ink::Clip{true, ink::Path::rect(frame)});
    out.add(ink::Picture{whole, photo.format, photo.bytes});
    out.add(ink::Clip{false, {}});
    return out;
}

namespace {

/// The part of the width with which the left of two photographs is as high as the right one; never
/// less than a third.
double left_share(const Pictures& pictures) {
    const auto shape = [](const photo::Photo& p) { return p.shown.width / p.shown.height; };
    const double left = shape(*pictures.before), right = shape(*pictures.after);
    return std::clamp(left / (left + right), 1.0 / 3, 2.0 / 3);
}

/// One photograph with its name over it.
ink::Drawing named(const Easel& easel, const photo::Photo& photo, const char* key, double width,
                   double height) {
    ink::Drawing print = print_of(photo, width, height);
    print.add(ink::Stroke{ink::Path::rect({0, 0, print.size.width, print.size.height}),
                          0.5,
                          easel.theme.rule,
                          {},
                          ink::Cap::butt});
    print.message = easel.words.say(key);
    ink::Drawing name = figure::paragraph(easel, Text::label, easel.words.say(key), width);
    return stacked({tagged(std::move(name), "P"), tagged(std::move(print), "Figure")}, 3);
}

} // namespace

Section photograph_page(const Easel& easel, const Pictures& pictures, const std::string& caption) {
    Section section{.name = "photographs", .title = easel.words.say("photo.question")};
    section.blocks.push_back(page_title(easel, section.title));
    const double gutter = easel.theme.gutter * figure::mm, room = easel.theme.live(true).height;
    const bool large = easel.theme.setting(Text::body).style.size > 14;
    const bool two = pictures.before && pictures.after;
    const double width = two && !large ? (column_width(easel) - gutter) / 2 : column_width(easel);
    const double height = two && large ? room * 0.36 : room * 0.62;
    std::vector<ink::Drawing> prints;
    const auto add = [&](const std::optional<photo::Photo>& photo, const char* key, double wide) {
        if (photo) prints.push_back(named(easel, *photo, key, wide, height));
    };
    const double share = two && !large ? left_share(pictures) : 0.5; // so that both are as high
    add(pictures.before, "photo.before", two && !large ? 2 * width * share : width);
    add(pictures.after, "photo.after", two && !large ? 2 * width * (1 - share) : width);
    Block block{.name = "photographs"};
    block.space_before = 6;
    if (two && !large)
        block.pieces.push_back(
            {side_by_side({{prints[0], 0}, {prints[1], 2 * width * share + gutter}})});
    else
        for (auto& print : prints) {
            print.size.height += 8;
            block.pieces.push_back({std::move(print)});
        }
    section.blocks.push_back(std::move(block));
    if (!caption.empty()) section.blocks.push_back(text_block(easel, Text::coach, caption, 8));
    section.blocks.push_back(text_block(easel, Text::small, easel.words.say("photo.note"), 8));
    const double rest = room - total_height(section.blocks) - 30;
    if (rest > 90) {
        Block lines{.name = "lines"};
        lines.space_before = 16;
        lines.pieces.push_back(
            {lines_to_write_on(easel, easel.words.say("photo.lines"), column_width(easel), rest)});
        section.blocks.push_back(std::move(lines));
    }
    return section;
}

ink::Drawing logo_of(const Pictures& pictures, double width) {
    if (!pictures.logo) return {};
    ink::Drawing logo = print_of(*pictures.logo, std::min(logo_width, width * 0.4), logo_height);
    ink::Drawing out;
    out.add(ink::Tag{true, "Artifact", {}}); // the foot of the page names the house in words
    out.add(logo, {width - logo.size.width, 0});
    out.add(ink::Tag{false, "Artifact", {}});
    out.size = {logo.size.width, logo.size.height};
    return out;
}

} // namespace page
