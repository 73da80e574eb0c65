#include "figure/worded_hand.hpp"

#include "figure/callout.hpp"
#include "figure/grip.hpp"

#include <algorithm>

namespace figure {

namespace {

constexpr double air = 8; ///< between hand and words, points: room for a leader

} // namespace

ink::Drawing worded_hand(const Easel& easel, const hand::Picture& picture, unit::Hand hand,
                         std::span<const AnchorWords> words, ink::Size box) {
    const auto& setting = easel.theme.setting(theme::Text::caption);
    const double column = box.width * 0.36, room = box.width - column - air;
    const double width = std::min(room, box.height * picture.width / picture.height);
    const double k = width / picture.width;
    ink::Drawing out;
    out.add(hand_drawing(easel.theme, picture, hand, width), {0, 0});
    out.size = {width + air + column, picture.height * k};
    std::vector<Callout> callouts;
    for (const auto& each : words) {
        const auto found = std::ranges::find(picture.anchors, each.anchor, &hand::Anchor::name);
        if (found == picture.anchors.end()) continue;
        const double x = hand == unit::Hand::left ? picture.width - found->at.x : found->at.x;
        const ink::Point at{x * k, found->at.y * k};
        out.add(ink::Fill{ink::Path::circle(at, 1.5), easel.theme.text});
        callouts.push_back({at, paragraph(easel, theme::Text::caption, each.words, column), 0});
    }
    put_callouts(out, std::move(callouts), {width + air, 0, column, out.size.height},
                 setting.leading, easel.theme.text);
    return out;
}

} // namespace figure
