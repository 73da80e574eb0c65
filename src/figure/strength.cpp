#include "figure/strength.hpp"

#include "figure/callout.hpp"
#include "figure/grip.hpp"
#include "figure/scale.hpp"
#include "figure/symbol.hpp"

#include <algorithm>
#include <cmath>

namespace figure {

namespace {

constexpr double symbol_radius = 3.4, most_hand_width = 64, row = 12;

/// A word under the line with the place that it names.
struct Named {
    double x = 0;
    std::string words;
};

/// What stands under the line; marks in one place share their words.
std::vector<Named> named_places(const Easel& easel, const StrengthInput& in, const Scale& x) {
    const auto& w = easel.words;
    const auto same = [](double a, std::optional<double> b) {
        return b && std::abs(a - *b) < 0.26;
    };
    std::vector<Named> out;
    if (in.before) out.push_back({x(*in.before), w.say("strip.you-before")});
    if (in.after)
        out.push_back({x(*in.after), w.say(same(in.wanted, in.after) ? "strip.you-after-wanted"
                                                                     : "strip.you-after")});
    if (!same(in.wanted, in.after)) out.push_back({x(in.wanted), w.say("strip.wanted")});
    std::ranges::sort(out, {}, &Named::x);
    return out;
}

void put_names(ink::Drawing& d, const Easel& easel, const std::vector<Named>& places, double line,
               double width) {
    std::vector<double> wishes, sizes;
    std::vector<ink::Words> set;
    for (const Named& n : places) {
        set.push_back(label(easel, theme::Text::tick, n.words, {0, line + 2 * row}));
        sizes.push_back(set.back().width);
        wishes.push_back(n.x - sizes.back() / 2);
    }
    const auto starts = spread_apart(wishes, sizes, 8, 0, width);
    for (std::size_t i = 0; i < set.size(); ++i) {
        set[i].at.x = starts[i];
        const ink::Point below{starts[i] + sizes[i] / 2, line + 2 * row - 9.5};
        d.add(ink::Stroke{ink::Path::segment({places[i].x, line + symbol_radius + 1.5}, below),
                          0.5,
                          easel.theme.text,
                          {},
                          ink::Cap::butt});
        d.add(set[i]);
    }
}

} // namespace

ink::Drawing strength_strip(const Easel& easel, const StrengthInput& in, double width) {
    const Scale x{0, 4, 8, width - 8};
    const double hand_width = std::min(x(1) - x(0) - 8, most_hand_width);
    ink::Drawing d;
    double tall = 0;
    constexpr std::array keys{"strip.weak", "strip.neutral", "strip.strong"};
    for (std::size_t i = 0; i < keys.size(); ++i) {
        const double middle = x(strip_knuckles[i]);
        const ink::Drawing hand = hand_drawing(easel.theme, in.hands[i], in.hand, hand_width);
        d.add(hand, {middle - hand_width / 2, 0});
        tall = std::max(tall, hand.size.height);
    }
    const double line = tall + row + 9;
    for (std::size_t i = 0; i < keys.size(); ++i)
        d.add(label(easel, bold(easel, theme::Text::tick), easel.words.say(keys[i]),
                    {x(strip_knuckles[i]), tall + row - 2}, text::Align::centre));
    const auto stroke = [&](ink::Point a, ink::Point b, double weight) {
        d.add(ink::Stroke{ink::Path::segment(a, b), weight, easel.theme.text, {}, ink::Cap::butt});
    };
    stroke({x(0), line}, {x(4), line}, easel.theme.widths.axis);
    for (const double k : strip_knuckles)
        stroke({x(k), line - 3}, {x(k), line + 3}, easel.theme.widths.axis);
    stroke({x(in.wanted), line - 6.5}, {x(in.wanted), line + 6.5}, 2);
    put_names(d, easel, named_places(easel, in, x), line, width);
    if (in.before) put(d, Symbol::before, {x(*in.before), line}, symbol_radius, easel.theme.text);
    if (in.after) put(d, Symbol::after, {x(*in.after), line}, symbol_radius, easel.theme.text);
    d.size = {width, line + 2 * row + 4};
    d.message = easel.words.say("strip.message");
    return d;
}

} // namespace figure
