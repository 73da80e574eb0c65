#include "figure/grip_card.hpp"

#include "figure/callout.hpp"
#include "figure/grip.hpp"
#include "words/number.hpp"

#include <algorithm>
#include <cmath>

namespace figure {

namespace {

constexpr double card_width = card_size.width, card_height = card_size.height;
constexpr double bleed = 8 * mm, inside = 7 * mm;
constexpr double least_picture = 60 * mm; ///< height of the hands on the front

/// Short lines outside the corners, where the knife runs.
void cut_marks(ink::Drawing& d, ink::Rect card, ink::Colour colour) {
    const double from = 1 * mm, to = 3.6 * mm;
    for (const double x : {card.x, card.right()})
        for (const double y : {card.y, card.bottom()}) {
            const double sx = x == card.x ? -1 : 1, sy = y == card.y ? -1 : 1;
            for (const ink::Path& p : {ink::Path::segment({x + sx * from, y}, {x + sx * to, y}),
                                       ink::Path::segment({x, y + sy * from}, {x, y + sy * to})})
                d.add(ink::Stroke{p, 0.5, colour, {}, ink::Cap::butt});
        }
}

/// The end of the handle as it is, in millimetres of paper.
void true_circle(ink::Drawing& d, const Easel& easel, ink::Point centre, double diameter) {
    const double r = diameter * mm / 2;
    d.add(ink::Fill{ink::Path::circle(centre, r), easel.theme.tint});
    d.add(ink::Stroke{ink::Path::circle(centre, r), 0.8, easel.theme.text, {}, ink::Cap::butt});
    d.add(
        ink::Stroke{ink::Path::circle(centre, r * .8), 0.5, easel.theme.text, {}, ink::Cap::butt});
    d.add(ink::Fill{ink::Path::circle(centre, r * .1), easel.theme.text});
}

/// A line of 50 mm with ticks every 10.
void ruler(ink::Drawing& d, const Easel& easel, ink::Point at) {
    const auto stroke = [&](ink::Point a, ink::Point b) {
        d.add(ink::Stroke{ink::Path::segment(a, b), 0.8, easel.theme.text, {}, ink::Cap::butt});
    };
    stroke(at, at + ink::Point{card_ruler * mm, 0});
    for (int i = 0; i <= 5; ++i) {
        const double x = i * card_ruler / 5 * mm;
        stroke(at + ink::Point{x, 0}, at + ink::Point{x, i % 5 == 0 ? -6.0 : -3.5});
    }
}

/// A side with the room that is left where it is tightest; below 0 something stands over something.
struct Side {
    ink::Drawing drawing;
    double spare = 0;
};

Side heading(const Easel& easel, const GripCardInput& in, double width) {
    const std::string title = easel.words.say("check.card");
    const auto& setting = easel.theme.setting(theme::Text::heading);
    ink::Drawing d = paragraph(easel, theme::Text::heading, title, width);
    ink::Words whose = label(easel, theme::Text::small, in.name + " · " + in.date,
                             {width, setting.leading * 0.76}, text::Align::right);
    if (easel.type.line(title, setting.style).width + whose.width + 6 > width) { // under the title
        const double leading = easel.theme.setting(theme::Text::small).leading;
        whose.at = {0, d.size.height + leading * 0.76};
        d.size.height += leading;
    }
    const double spare = width - whose.width;
    d.add(std::move(whose));
    return {std::move(d), spare};
}

ink::Drawing targets(const Easel& easel, const GripCardInput& in, double width) {
    std::vector<ink::Drawing> lines;
    for (const auto& target : in.targets)
        lines.push_back(paragraph(easel, theme::Text::coach, target, width));
    return stacked(lines);
}

/// The wanted hold, and beside it the hold as it was left.
Side front(const Easel& easel, const GripCardInput& in) {
    const double width = card_width - 2 * inside, height = card_height - 2 * inside;
    Side side = heading(easel, in, width);
    ink::Drawing& d = side.drawing;
    double top = d.size.height + 4;
    const ink::Drawing foot = paragraph(easel, theme::Text::small,
                                        easel.words.say("grip.caption.lead") + " " +
                                            easel.words.say("grip.caption.looking-down"),
                                        width);
    const auto& title = easel.theme.setting(theme::Text::label);
    const ink::Drawing own = targets(easel, in, width);
    const double room = height - top - title.leading - foot.size.height - own.size.height - 12;
    const double each = in.after ? width / 2 - 4 : width * 0.62;
    const double shown = std::min(each, room * in.target.width / in.target.height);
    const auto put = [&](const hand::Picture& picture, const char* key, double middle) {
        d.add(label(easel, theme::Text::label, easel.words.say(key),
                    {middle, top + title.style.size}, text::Align::centre));
        d.add(hand_drawing(easel.theme, picture, in.hand, shown),
              {middle - shown / 2, top + title.leading});
    };
    if (in.after) put(*in.after, "grip.after", width * 0.25);
    put(in.target, "grip.target", in.after ? width * 0.75 : width / 2);
    d.add(own, {0, height - foot.size.height - own.size.height - 6});
    d.add(foot, {0, height - foot.size.height});
    d.size = {width, height};
    side.spare = std::min(side.spare, room - least_picture);
    return side;
}

/// The six looks, then the handle and the ruler at true size.
Side back(const Easel& easel, const GripCardInput& in) {
    const double width = card_width - 2 * inside, height = card_height - 2 * inside;
    Side side;
    ink::Drawing& d = side.drawing =
        paragraph(easel, theme::Text::heading, easel.words.say("check.title"), width);
    double y = d.size.height + 4;
    const auto style = bold(easel, theme::Text::body);
    for (std::size_t i = 0; i < in.checklist.size(); ++i) {
        const ink::Drawing line = paragraph(easel, theme::Text::body, in.checklist[i], width - 34);
        d.add(label(easel, style, std::to_string(i + 1),
                    {0, y + easel.theme.setting(theme::Text::body).leading * 0.76}));
        d.add(line, {15, y});
        d.add(ink::Stroke{ink::Path::rect({width - 12, y + 2, 11, 11}),
                          0.8,
                          easel.theme.text,
                          {},
                          ink::Cap::butt});
        y += line.size.height + 8;
    }
    const ink::Drawing below =
        paragraph(easel, theme::Text::small, easel.words.say("card.ruler"), width - 1);
    const double r = in.handle_diameter * mm / 2;
    const double foot = height + 13 - std::max(15.0, below.size.height);
    const ink::Point centre{r + 1, foot - 34 - r};
    true_circle(d, easel, centre, in.handle_diameter);
    const double beside = 2 * r + 14;
    ink::Drawing words = paragraph(
        easel, theme::Text::body,
        easel.words.say("card.true-size",
                        {{"mm", words::fixed(in.handle_diameter, 1, easel.words.language())}}),
        width - beside);
    const double half = std::max(r, words.size.height / 2);
    d.add(words, {beside, centre.y - words.size.height / 2});
    ruler(d, easel, {1, foot - 16});
    d.add(below, {1, foot - 14});
    d.size = {width, height};
    side.spare = std::min(centre.y - half - 4 - (y - 8), foot - 24 - (centre.y + half));
    return side;
}

/// The same letters, smaller; never below the smallest of the theme.
theme::Theme reduced(theme::Theme theme, double scale) {
    for (auto& text : theme.texts) {
        const double size =
            std::max(text.style.size * scale, std::min(theme.smallest, text.style.size));
        text.leading *= size / text.style.size;
        text.style.size = size;
    }
    return theme;
}

} // namespace

GripCardSides grip_card_sides(const Easel& easel, const GripCardInput& in) {
    const auto side = [](const ink::Drawing& inner) {
        ink::Drawing out;
        out.size = card_size;
        out.add(inner, {inside, inside});
        return out;
    };
    for (double scale = 1;; scale -= 0.05) {
        const theme::Theme theme = reduced(easel.theme, scale);
        const Easel smaller{easel.type, theme, easel.words};
        const Side one = front(smaller, in), other = back(smaller, in);
        if (std::min(one.spare, other.spare) >= 0 || scale < 0.45)
            return {side(one.drawing), side(other.drawing)};
    }
}

ink::Drawing grip_card(const Easel& easel, const GripCardInput& in) {
    ink::Drawing d;
    d.size = {2 * card_width + 3 * bleed, card_height + 2 * bleed};
    const GripCardSides sides = grip_card_sides(easel, in);
    double x = bleed;
    for (const ink::Drawing* side : {&sides.front, &sides.back}) {
        cut_marks(d, {x, bleed, card_width, card_height}, easel.theme.rule);
        d.add(*side, {x, bleed});
        x += card_width + bleed;
    }
    d.message = easel.words.say("card.message");
    return d;
}

} // namespace figure
