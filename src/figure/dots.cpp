#include "figure/dots.hpp"

#include "words/number.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <cmath>

namespace figure {

std::vector<double> spread_of(const DotInput& input) {
    std::vector<double> values;
    for (const DotRow& row : input.rows)
        for (const Dot& dot : row.dots)
            values.push_back(dot.value);
    if (input.wanted) values.insert(values.end(), {input.wanted->first, input.wanted->second});
    return values;
}

std::string tick_text(const Easel& easel, unit::Measure measure, double shown) {
    const bool upward = measure == unit::Measure::attack; // "2 ↓": nobody reads -2 as down
    const double size = unit::row(measure).sided || upward ? std::abs(shown) : shown;
    const bool whole = std::abs(size - std::round(size)) < 1e-6;
    const std::string text = words::fixed(size, whole ? 0 : 1, easel.words.language());
    if (!upward || shown == 0) return text;
    return text + std::string(words::no_break_space) + (shown < 0 ? "↓" : "↑");
}

namespace {

/// A strip's dots sit on one line; those that would touch step up and down.
std::vector<double> swarm(const std::vector<Dot>& dots, const Scale& scale, double radius,
                          double reach) {
    std::vector<std::size_t> order(dots.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::ranges::stable_sort(order, {}, [&](std::size_t i) { return dots[i].value; });
    std::vector<double> x(dots.size()), y(dots.size(), 0);
    std::vector<std::size_t> placed; // by value: what lies too far back ends the search
    const double apart = 2 * radius * 0.92;
    for (const std::size_t i : order) {
        x[i] = scale(dots[i].value);
        for (int step = 0; step < 12; ++step) {
            const double lift = (step % 2 ? 1 : -1) * ((step + 1) / 2) * apart * 0.5;
            const double wish = std::clamp(lift, -reach, reach);
            bool free = true;
            for (auto k = placed.rbegin();
                 free && k != placed.rend() && std::abs(x[*k] - x[i]) < apart; ++k)
                free = std::hypot(x[*k] - x[i], y[*k] - wish) >= apart;
            y[i] = wish;
            if (free) break;
        }
        placed.push_back(i);
    }
    return y;
}

/// Names of the rows, and at the ends of a sided axis the directions.
void add_names(ink::Drawing& d, const Easel& easel, const DotInput& input, const Scale& scale,
               double row_height) {
    const auto style = easel.theme.setting(theme::Text::tick).style;
    double y = row_height / 2;
    for (const DotRow& row : input.rows) {
        d.add(label(easel, style, row.name, {0, y + middle(style)}));
        y += row_height;
    }
    if (!unit::row(input.measure).sided) return;
    const double leading = easel.theme.setting(theme::Text::tick).leading;
    double foot = d.size.height + leading;
    const auto left =
        label(easel, style, easel.words.say("figure.end.other.left"), {scale.from, foot});
    auto right = label(easel, style, easel.words.say("figure.end.other.right"), {scale.to, foot},
                       text::Align::right);
    if (left.width + right.width + 6 > scale.to - scale.from) { // no room side by side
        foot += leading;
        right = label(easel, style, easel.words.say("figure.end.other.right"), {scale.to, foot},
                      text::Align::right);
    }
    d.add(left);
    d.add(std::move(right));
    d.size.height = foot + 3;
}

/// The smallest step, five ticks at most, whose ticks stand clear of each other.
double clear_step(const Easel& easel, unit::Measure measure, const Scale& scale, double size) {
    const auto& style = easel.theme.setting(theme::Text::tick).style;
    const double least = scale.least / size, most = scale.most / size;
    double step = 0;
    for (int n = 5; n >= 2; --n) {
        step = pleasant_step(most - least, n);
        double widest = 0;
        for (const double v : ticks(least, most, step))
            widest = std::max(widest, easel.type.line(tick_text(easel, measure, v), style).width);
        if (step / (most - least) * (scale.to - scale.from) >= widest * 1.4) break;
    }
    return step;
}

} // namespace

ink::Drawing strip(const Easel& easel, const DotInput& input, const Scale& scale, double width,
                   bool named) {
    const auto& t = easel.theme;
    const double line = t.setting(theme::Text::tick).leading;
    const double name_room = named ? line * 0.95 : 0; // names stand under each other
    const double row_height = std::max(input.rows.size() > 2 ? 10.5 : 12.5, name_room),
                 radius = 2.4;
    ink::Drawing d;
    const double foot = static_cast<double>(input.rows.size()) * row_height;
    d.size = {width, foot + line + 2};
    d.message = input.message;

    if (input.wanted) {
        const double l = std::max(scale(input.wanted->first), scale.from);
        const double r = std::min(scale(input.wanted->second), scale.to);
        hatch(d, {l, 0, r - l, foot}, 3.2, 0.35, t.rule);
    }
    if (unit::row(input.measure).sided && scale.holds(0))
        d.add(ink::Stroke{ink::Path::segment({scale(0), 0}, {scale(0), foot}), t.widths.axis,
                          t.text});

    double y = row_height / 2;
    for (const DotRow& row : input.rows) {
        d.add(ink::Stroke{
            ink::Path::segment({scale.from, y}, {scale.to, y}), 0.35, t.rule, {}, ink::Cap::butt});
        if (row.sample.count > 2) {
            const ink::Rect half{scale(row.sample.lower), y - 3.6,
                                 scale(row.sample.upper) - scale(row.sample.lower), 7.2};
            d.add(ink::Stroke{ink::Path::round_rect(half, 2), 0.5, t.rule});
        }
        const auto lift = swarm(row.dots, scale, radius, row_height / 2 - radius);
        for (std::size_t i = 0; i < row.dots.size(); ++i)
            put(d, row.dots[i].set_aside ? Symbol::set_aside : row.symbol,
                {scale(row.dots[i].value), y + lift[i]}, radius, t.text);
        if (row.sample.count > 0)
            d.add(ink::Stroke{ink::Path::segment({scale(row.sample.median), y - 5.4},
                                                 {scale(row.sample.median), y + 5.4}),
                              1.6,
                              t.text,
                              {},
                              ink::Cap::butt});
        y += row_height;
    }

    const double size =
        unit::size_of_unit(unit::row(input.measure).kind, easel.words.voice().units);
    const double least = scale.least / size, most = scale.most / size;
    const double step = clear_step(easel, input.measure, scale, size);
    for (const double v : ticks(least, most, step)) {
        const double x = scale(v * size);
        d.add(ink::Stroke{
            ink::Path::segment({x, foot}, {x, foot + 2.5}), 0.5, t.rule, {}, ink::Cap::butt});
        ink::Words name = label(easel, theme::Text::tick, tick_text(easel, input.measure, v),
                                {x, foot + line}, text::Align::centre);
        name.at.x = std::min(name.at.x, width - name.width);
        d.add(std::move(name));
    }
    d.add(ink::Stroke{ink::Path::segment({scale.from, foot}, {scale.to, foot}),
                      t.widths.axis,
                      t.rule,
                      {},
                      ink::Cap::butt});
    if (named) add_names(d, easel, input, scale, row_height);
    return d;
}

} // namespace figure
