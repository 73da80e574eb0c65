#include "figure/loft_ladder.hpp"

#include "figure/callout.hpp"
#include "figure/scale.hpp"
#include "words/number.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <cmath>

namespace figure {

namespace {

struct Ladder {
    const Easel& easel;
    const LadderInput& input;
    std::vector<Rung> rungs; ///< those drawn, most loft first
    Scale scale;             ///< degrees to y, more loft higher
    double left = 0, right = 0, top = 0, bottom = 0;

    double centre() const { return (left + right) / 2; }
};

std::string degrees(const Easel& easel, double loft) {
    return words::quantity(unit::Measure::loft, loft, easel.words);
}

/// "in hand: 7 iron 32°"
std::string name_of(const Easel& easel, const Rung& rung) {
    const bool whole = std::abs(rung.loft - std::round(rung.loft)) < 0.05;
    const std::string loft = words::fixed(rung.loft, whole ? 0 : 1, easel.words.language()) +
                             std::string(unit::symbol(unit::Kind::angle, {}));
    return easel.words.say(rung.in_hand ? "ballfigure.ladder.rung-in-hand"
                                        : "ballfigure.ladder.rung",
                           {{"club", rung.club}, {"x", loft}});
}

ink::Drawing words_of(const Easel& easel, const Rung& rung, double width) {
    auto setting = easel.theme.setting(theme::Text::caption);
    if (rung.in_hand) setting.style.weight = 700;
    return paragraph(easel, setting, name_of(easel, rung), width, text::Align::right);
}

/// The rungs between the lowest and the highest of marks and club in hand, and one more each way.
std::vector<Rung> near_the_action(const LadderInput& input) {
    std::vector<Rung> rungs = input.rungs;
    std::ranges::stable_sort(rungs, std::ranges::greater{}, &Rung::loft);
    double least = 90, most = -90;
    const auto hold = [&](double loft) {
        least = std::min(least, loft);
        most = std::max(most, loft);
    };
    for (const LoftMark& mark : input.marks)
        hold(mark.loft);
    for (const Rung& rung : rungs)
        if (rung.in_hand) hold(rung.loft);
    if (least > most) return rungs;
    std::size_t first = 0, last = rungs.size();
    while (first + 1 < rungs.size() && rungs[first + 1].loft > most)
        ++first;
    while (last > first + 1 && rungs[last - 2].loft < least)
        --last;
    return {rungs.begin() + static_cast<std::ptrdiff_t>(first),
            rungs.begin() + static_cast<std::ptrdiff_t>(last)};
}

std::string sentence(const Easel& easel, const LadderInput& input, const LoftMark& mark) {
    const std::string stem =
        std::string("ballfigure.ladder.like.") + (input.usual_bag ? "usual" : "own");
    if (mark.plays_like.empty()) return {};
    if (mark.plays_like.size() == 1) return easel.words.say(stem, {{"club", mark.plays_like[0]}});
    return easel.words.say(stem + "-between",
                           {{"first", mark.plays_like[0]}, {"second", mark.plays_like[1]}});
}

std::string_view origin_key(LoftOrigin origin) {
    switch (origin) {
    case LoftOrigin::leaned:
        return "ballfigure.ladder.origin.leaned";
    case LoftOrigin::measured:
        return "ballfigure.ladder.origin.measured";
    case LoftOrigin::launch:
        return "ballfigure.ladder.origin.launch";
    case LoftOrigin::face:
        break;
    }
    return "ballfigure.ladder.origin.face";
}

ink::Drawing words_of(const Easel& easel, const LadderInput& input, const LoftMark& mark,
                      double width) {
    auto head = easel.theme.setting(theme::Text::label);
    head.style.colour = easel.theme.text;
    auto plain = easel.theme.setting(theme::Text::caption);
    auto tiny = easel.theme.setting(theme::Text::tick);
    std::vector<ink::Drawing> parts{
        paragraph(easel, head,
                  easel.words.say("ballfigure.ladder.mark",
                                  {{"name", mark.name}, {"x", degrees(easel, mark.loft)}}),
                  width)};
    if (const auto like = sentence(easel, input, mark); !like.empty())
        parts.push_back(paragraph(easel, plain, like, width));
    parts.push_back(paragraph(easel, tiny, easel.words.say(origin_key(mark.origin)), width));
    return stacked(parts);
}

/// Both uprights, with a mark a degree on the left one.
void draw_uprights(ink::Drawing& d, const Ladder& l) {
    const auto& t = l.easel.theme;
    for (const double x : {l.left, l.right})
        d.add(ink::Stroke{ink::Path::segment({x, l.top}, {x, l.bottom}),
                          t.widths.strong,
                          t.text,
                          {},
                          ink::Cap::round});
    ink::Path marks;
    for (const double v : ticks(l.scale.least, l.scale.most, 1))
        marks.move({l.left, l.scale(v)}).line({l.left + 4, l.scale(v)});
    if (!marks.empty()) d.add(ink::Stroke{marks, 0.5, t.text, {}, ink::Cap::butt});
}

/// Rungs and their names; names that crowd step apart and keep a thin line to their rung.
void draw_rungs(ink::Drawing& d, const Ladder& l) {
    const auto& t = l.easel.theme;
    std::vector<double> wishes, sizes;
    std::vector<ink::Drawing> names;
    for (const Rung& rung : l.rungs) {
        names.push_back(words_of(l.easel, rung, l.left - 12));
        sizes.push_back(names.back().size.height);
        wishes.push_back(l.scale(rung.loft) - sizes.back() / 2);
    }
    const auto tops = spread_apart(wishes, sizes, 0, 0, d.size.height);
    for (std::size_t i = 0; i < l.rungs.size(); ++i) {
        const Rung& rung = l.rungs[i];
        const double y = l.scale(rung.loft), at = tops[i] + sizes[i] / 2;
        d.add(ink::Stroke{ink::Path::segment({l.left, y}, {l.right, y}),
                          rung.in_hand ? 3.0 : t.widths.data,
                          t.text,
                          {},
                          ink::Cap::butt});
        d.add(ink::Stroke{ink::Path::segment({l.left - 10, at}, {l.left - 1, y}),
                          0.35,
                          t.text,
                          {},
                          ink::Cap::butt});
        d.add(names[i], {0, tops[i]});
    }
}

/// The marks along the middle of the ladder, and an arrow from before to after.
void draw_marks(ink::Drawing& d, const Ladder& l, const ink::Rect& column) {
    const auto& t = l.easel.theme;
    std::vector<Callout> callouts;
    const double apart = (l.right - l.left) * 0.44;
    const auto place = [&](std::size_t i) {
        const auto n = static_cast<double>(l.input.marks.size());
        const double k = n < 2 ? 0 : static_cast<double>(i) / (n - 1) - 0.5;
        return ink::Point{l.centre() + k * apart, l.scale(l.input.marks[i].loft)};
    };
    for (std::size_t i = 0; i < l.input.marks.size(); ++i)
        callouts.push_back(
            {place(i), words_of(l.easel, l.input, l.input.marks[i], column.width), 6});
    put_callouts(d, callouts, column, t.setting(theme::Text::label).leading, t.text);
    for (std::size_t i = 0; i + 1 < l.input.marks.size(); ++i) {
        if (l.input.marks[i].symbol != Symbol::before) continue; // the cold test came first
        const ink::Point a = place(i), b = place(i + 1), way_on = b - a;
        const double length = std::hypot(way_on.x, way_on.y);
        if (std::abs(way_on.y) < 14) continue;
        const ink::Point u = way_on * (1 / length);
        d.add(ink::Stroke{
            ink::Path::segment(a + u * 5, b - u * 9), 4.6, ink::white, {}, ink::Cap::butt});
        arrow(d, a + u * 5, b - u * 6, 1.4, 7, t.text);
    }
    for (std::size_t i = 0; i < l.input.marks.size(); ++i) {
        d.add(ink::Fill{ink::Path::circle(place(i), 6.4), ink::white});
        put(d, l.input.marks[i].symbol, place(i), 5, t.text);
    }
}

} // namespace

ink::Drawing loft_ladder(const Easel& easel, const LadderInput& input, double width,
                         double height) {
    Ladder l{easel, input, near_the_action(input), {}};
    double names = 0;
    const auto wide = bold(easel, theme::Text::caption);
    for (const Rung& rung : l.rungs)
        names = std::max(names, easel.type.line(name_of(easel, rung), wide).width);
    l.left = std::min(names + 12, width * 0.43);
    l.right = l.left + std::clamp(width * 0.13, 30.0, 46.0);
    const ink::Rect aside{l.right + 14, 0, width - l.right - 14, 0};

    double labels = 0;
    std::vector<double> values;
    for (const LoftMark& mark : input.marks) {
        labels += words_of(easel, input, mark, aside.width).size.height + 4;
        values.push_back(mark.loft);
    }
    for (const Rung& rung : l.rungs)
        values.push_back(rung.loft);
    const auto note = paragraph(easel, theme::Text::tick,
                                easel.words.say(input.usual_bag ? "ballfigure.ladder.ticks-typical"
                                                                : "ballfigure.ladder.ticks"),
                                width);
    double rung_names = 0;
    for (const Rung& rung : l.rungs)
        rung_names += words_of(easel, rung, l.left - 12).size.height;
    const double body = std::max({height - note.size.height - 3, labels, rung_names, 60.0});
    ink::Drawing d;
    d.size = {width, body};
    d.message = input.message;
    const auto [least, most] =
        values.empty() ? std::pair{30.0, 40.0}
                       : std::pair{std::ranges::min(values) - 1.5, std::ranges::max(values) + 1.5};
    l.top = 1, l.bottom = body - 1;
    l.scale = {least, most, l.bottom, l.top};
    draw_uprights(d, l);
    draw_rungs(d, l);
    draw_marks(d, l, {aside.x, 0, aside.width, body});
    d.add(note, {0, body + 3});
    d.size.height = body + 3 + note.size.height;
    return d;
}

} // namespace figure
