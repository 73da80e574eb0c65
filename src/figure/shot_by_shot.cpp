#include "figure/dots.hpp"
#include "words/number.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <cmath>

namespace figure {

namespace {

/// Everything the parts of the figure share.
struct Frame {
    const Easel& easel;
    const DotInput& input;
    Scale scale;
    double row = 9;  ///< height of one shot
    double gap = 15; ///< height of the line with the block's name and middle shot
    double left = 0; ///< where names and numbers end
    double top = 0, bottom = 0;
};

double names_width(const Easel& easel, const DotInput& input) {
    const auto& tick = easel.theme.setting(theme::Text::tick).style;
    double width = 0, number = easel.type.line("00", tick).width;
    for (const DotRow& row : input.rows) {
        width = std::max(width, easel.type.line(row.name, bold(easel, theme::Text::label)).width);
        for (const Dot& dot : row.dots)
            if (dot.number > 99)
                number = std::max(number, easel.type.line(std::to_string(dot.number), tick).width);
    }
    return width + number + 14;
}

/// One block: its name, every shot as a stem from the target line, its middle shot.
double draw_block(ink::Drawing& d, const Frame& f, const DotRow& row, double y) {
    const auto& t = f.easel.theme;
    const bool sided = unit::row(f.input.measure).sided;
    const double foot = y + static_cast<double>(row.dots.size()) * f.row;
    const double radius = std::clamp(f.row * 0.4, 2.0, 3.1);
    const double from = sided ? f.scale(0) : f.scale.from;

    d.add(label(f.easel, bold(f.easel, theme::Text::label), row.name,
                {0, y + t.setting(theme::Text::label).style.size * 0.95}));
    const double apart = t.setting(theme::Text::tick).style.size * 0.95;
    const std::size_t every =
        f.row >= apart ? 1 : static_cast<std::size_t>(std::ceil(apart / f.row));
    double at = y + f.row / 2;
    for (std::size_t i = 0; i < row.dots.size(); ++i, at += f.row) {
        const Dot& dot = row.dots[i];
        const double x = f.scale(dot.value);
        if (!dot.set_aside)
            d.add(ink::Stroke{ink::Path::segment({from, at}, {x, at}),
                              std::min(0.6, f.row * 0.1),
                              t.rule,
                              {},
                              ink::Cap::butt});
        put(d, dot.set_aside ? Symbol::set_aside : row.symbol, {x, at}, radius, t.text);
        if (i % every == 0) {
            auto style = t.setting(theme::Text::tick).style;
            d.add(label(f.easel, style, std::to_string(dot.number),
                        {f.left - 6, at + middle(style)}, text::Align::right));
        }
    }
    if (row.sample.count > 0) {
        const double x = f.scale(row.sample.median);
        d.add(ink::Stroke{
            ink::Path::segment({x, y - 1}, {x, foot + 3}), 1.6, t.text, {}, ink::Cap::butt});
        const auto style = bold(f.easel, theme::Text::tick);
        const std::string what = f.easel.words.say(
            "figure.middle-shot",
            {{"value", words::side(f.input.measure, row.sample.median, f.easel.words)}});
        ink::Words line = label(f.easel, style, what, {0, foot + 3 + style.size});
        line.at.x = std::clamp(x - line.width / 2, f.left, d.size.width - line.width);
        const ink::Rect box = line.box().inset(-1.5);
        d.add(ink::Fill{ink::Path::rect(box), ink::white});
        d.add(std::move(line));
    }
    return foot + f.gap;
}

void draw_axis(ink::Drawing& d, const Frame& f) {
    const auto& t = f.easel.theme;
    const auto& tick = t.setting(theme::Text::tick);
    const double size =
        unit::size_of_unit(unit::row(f.input.measure).kind, f.easel.words.voice().units);
    const double least = f.scale.least / size, most = f.scale.most / size;
    for (const double v : ticks(least, most, pleasant_step(most - least, 9))) {
        const double x = f.scale(v * size);
        d.add(ink::Stroke{
            ink::Path::segment({x, f.bottom}, {x, f.bottom + 3}), 0.5, t.rule, {}, ink::Cap::butt});
        ink::Words name = label(f.easel, theme::Text::tick, tick_text(f.easel, f.input.measure, v),
                                {x, f.bottom + tick.leading}, text::Align::centre);
        name.at.x = std::min(name.at.x, f.scale.to + 8 - name.width);
        d.add(std::move(name));
    }
    d.add(ink::Stroke{ink::Path::segment({f.scale.from, f.bottom}, {f.scale.to, f.bottom}),
                      t.widths.axis,
                      t.text,
                      {},
                      ink::Cap::butt});
    const double y = f.bottom + 2 * tick.leading + 2;
    if (!unit::row(f.input.measure).sided) {
        d.add(label(f.easel, theme::Text::tick,
                    f.easel.words.say("figure.axis-unit",
                                      {{"unit", unit::symbol(unit::row(f.input.measure).kind,
                                                             f.easel.words.voice().units)}}),
                    {(f.scale.from + f.scale.to) / 2, y}, text::Align::centre));
        return;
    }
    const auto style = bold(f.easel, theme::Text::tick);
    const std::string what(f.input.measure == unit::Measure::path ? "path" : "face");
    const bool handed =
        f.input.measure == unit::Measure::face || f.input.measure == unit::Measure::path;
    const std::string stem = handed ? "figure.end." + what : "figure.end.other";
    const ink::Words left = label(f.easel, style, f.easel.words.say(stem + ".left"),
                                  {f.scale.from, y}),
                     target = label(f.easel, style, f.easel.words.say("figure.target"),
                                    {f.scale(0), y}, text::Align::centre);
    ink::Words right = label(f.easel, style, f.easel.words.say(stem + ".right"), {f.scale.to, y},
                             text::Align::right);
    const auto clear = [](const ink::Words& a, const ink::Words& b) {
        return a.at.x + a.width + 6 < b.at.x;
    };
    d.add(left);
    if (clear(left, target) && clear(target, right)) d.add(target);
    if (!clear(left, right)) right.at.y += tick.leading; // too narrow for one line
    d.add(right);
}

/// The wanted range as a hatched band, named once at its top.
void draw_wanted(ink::Drawing& d, const Frame& f) {
    if (!f.input.wanted) return;
    const auto& t = f.easel.theme;
    const double l = std::max(f.scale(f.input.wanted->first), f.scale.from);
    const double r = std::min(f.scale(f.input.wanted->second), f.scale.to);
    hatch(d, {l, f.top, r - l, f.bottom - f.top}, 4.5, 0.35, t.rule);
    const auto style = t.setting(theme::Text::tick).style;
    d.add(label(f.easel, style, f.easel.words.say("figure.wanted"), {(l + r) / 2, f.top - 3},
                text::Align::centre));
}

} // namespace

ink::Drawing shot_by_shot(const Easel& easel, const DotInput& input, double width, double height) {
    const auto& tick = easel.theme.setting(theme::Text::tick);
    std::size_t shots = 0;
    for (const DotRow& row : input.rows)
        shots += row.dots.size();
    Frame f{easel, input, {}};
    f.gap = tick.leading + 11;
    f.left = names_width(easel, input);
    f.top = input.wanted ? tick.leading : 2;
    const double fixed =
        f.top + f.gap * static_cast<double>(input.rows.size()) + 2 * tick.leading + 6;
    f.row = std::clamp((height - fixed) / static_cast<double>(std::max<std::size_t>(shots, 1)), 0.5,
                       10.0);

    const auto values = spread_of(input);
    f.scale = unit::row(input.measure).sided ? centred(values, f.left, width - 8, 4)
                                             : fitted(values, f.left, width - 8, 8);
    f.bottom =
        f.top + f.row * static_cast<double>(shots) + f.gap * static_cast<double>(input.rows.size());
    ink::Drawing d;
    d.size = {width, f.bottom + 2 * tick.leading + 6};
    d.message = input.message;
    draw_wanted(d, f);
    if (unit::row(input.measure).sided)
        d.add(ink::Stroke{ink::Path::segment({f.scale(0), f.top}, {f.scale(0), f.bottom}),
                          easel.theme.widths.data,
                          easel.theme.text,
                          {},
                          ink::Cap::butt});
    double y = f.top + 2;
    for (const DotRow& row : input.rows)
        y = draw_block(d, f, row, y);
    draw_axis(d, f);
    return d;
}

} // namespace figure
