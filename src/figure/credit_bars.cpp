#include "figure/credit_bars.hpp"

#include "figure/callout.hpp"
#include "figure/scale.hpp"
#include "words/number.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace figure {

namespace {

enum class Look : std::uint8_t { solid, hatched, outlined };

struct Bar {
    std::string name, value;
    double size = 0;
    std::optional<std::pair<double, double>> range;
    Look look = Look::solid;
};

std::string_view key(Factor factor) {
    constexpr std::array<std::string_view, 5> keys{"face", "path", "loft", "speed", "strike"};
    return keys[static_cast<std::size_t>(factor)];
}

std::string_view kind(const CreditInput& input) {
    return unit::row(input.outcome).sided ? "sided." : "size.";
}

/// "4.9° left", "6 yd more": a part of the change with its direction.
std::string signed_size(const Easel& easel, const CreditInput& input, double value) {
    const auto units = easel.words.voice().units;
    const auto measure_kind = unit::row(input.outcome).kind;
    const double shown = value / unit::size_of_unit(measure_kind, units);
    const double seen = words::rounded(shown, words::decimals(input.outcome, units));
    const std::string end = seen > 0 ? "plus" : seen < 0 ? "minus" : "none";
    return easel.words.say("ballfigure.credit." + std::string(kind(input)) + end,
                           {{"x", words::quantity(input.outcome, std::abs(value), easel.words)}});
}

std::vector<Bar> bars_of(const Easel& easel, const CreditInput& input) {
    const auto say = [&](std::string_view k) {
        return easel.words.say("ballfigure.credit." + std::string(k));
    };
    std::vector<Bar> bars;
    for (const CreditShare& share : input.shares)
        bars.push_back({say(key(share.factor)), signed_size(easel, input, share.value), share.value,
                        share.range, Look::solid});
    bars.push_back({say("unexplained"), signed_size(easel, input, input.unexplained),
                    input.unexplained, std::nullopt, Look::hatched});
    bars.push_back({say("measured"), signed_size(easel, input, input.measured), input.measured,
                    std::nullopt, Look::outlined});
    return bars;
}

Scale scale_of(const CreditInput& input, const std::vector<Bar>& bars, double from, double to) {
    double least = 0, most = 0;
    for (const Bar& bar : bars) {
        least = std::min({least, bar.size, bar.range ? bar.range->first : 0.0});
        most = std::max({most, bar.size, bar.range ? bar.range->second : 0.0});
    }
    if (unit::row(input.outcome).sided) {
        most = std::max(most, -least);
        least = -most;
    }
    const double range = std::max(most - least, 1e-3);
    return {least - 0.03 * range, most + 0.03 * range, from, to};
}

/// Black on paper, and once more in white where it crosses a solid bar.
void draw_whisker(ink::Drawing& d, const Scale& scale, const std::pair<double, double>& range,
                  double y, double cap, ink::Colour colour) {
    const double l = scale(range.first), r = scale(range.second);
    ink::Path whisker;
    whisker.move({l, y}).line({r, y});
    whisker.move({l, y - cap}).line({l, y + cap});
    whisker.move({r, y - cap}).line({r, y + cap});
    d.add(ink::Stroke{whisker, 0.9, colour, {}, ink::Cap::butt});
}

void draw_bar(ink::Drawing& d, const Easel& easel, const Scale& scale, const Bar& bar, double y,
              double half) {
    const auto& t = easel.theme;
    const double a = scale(0), b = scale(bar.size);
    const ink::Rect box{std::min(a, b), y - half, std::abs(b - a), 2 * half};
    if (bar.range) draw_whisker(d, scale, *bar.range, y, half * 0.8, t.text);
    if (bar.look == Look::solid) d.add(ink::Fill{ink::Path::rect(box), t.text});
    if (bar.look == Look::hatched) hatch(d, box, 2.6, 0.6, t.text);
    if (bar.look != Look::solid)
        d.add(ink::Stroke{ink::Path::rect(box),
                          bar.look == Look::outlined ? 1.1 : 0.8,
                          t.text,
                          {},
                          ink::Cap::butt});
    if (!bar.range || bar.look != Look::solid || box.width < 1.5) return;
    d.add(ink::Clip{true, ink::Path::rect(box)});
    draw_whisker(d, scale, *bar.range, y, half * 0.8, ink::white);
    d.add(ink::Clip{false, {}});
}

/// Which way the bars point.
void draw_ends(ink::Drawing& d, const Easel& easel, const CreditInput& input, const Scale& scale,
               double y, double width) {
    const auto& style = easel.theme.setting(theme::Text::tick).style;
    const std::string stem = "ballfigure.credit.end." + std::string(kind(input));
    ink::Words less =
        label(easel, style, easel.words.say(stem + "minus"), {scale(0) - 5, y}, text::Align::right);
    ink::Words more = label(easel, style, easel.words.say(stem + "plus"), {scale(0) + 5, y});
    less.at.x = std::max(0.0, less.at.x);
    more.at.x = std::min(std::max(more.at.x, less.at.x + less.width + 6), width - more.width);
    d.add(std::move(less));
    d.add(std::move(more));
}

} // namespace

ink::Drawing credit_bars(const Easel& easel, const CreditInput& input, double width) {
    const auto& t = easel.theme;
    const auto& tick = t.setting(theme::Text::tick);
    auto name_style = tick.style;
    name_style.colour = t.text;
    const auto strong = bold(easel, theme::Text::tick);
    const auto bars = bars_of(easel, input);
    double names = 0, values = 0;
    for (const Bar& bar : bars) {
        names = std::max(names, easel.type.line(bar.name, name_style).width);
        values = std::max(values, easel.type.line(bar.value, strong).width);
    }
    const std::string measure(unit::row(input.outcome).key);
    auto head = t.setting(theme::Text::label);
    const auto title =
        paragraph(easel, head,
                  easel.words.say(
                      "ballfigure.credit.title",
                      {{"measure", easel.words.say("measure." + measure)},
                       {"change", words::difference(input.outcome, input.measured, easel.words)}}),
                  width);
    const Scale scale = scale_of(input, bars, names + 7, width - values - 7);

    ink::Drawing d;
    d.message = input.message;
    d.add(title, {0, 0});
    double y = title.size.height + 1;
    const double top = y, row = tick.leading, half = row * 0.27;
    for (const Bar& bar : bars) {
        const bool total = bar.look == Look::outlined;
        if (total) {
            d.add(ink::Stroke{ink::Path::segment({0, y + 0.5}, {width, y + 0.5}),
                              0.35,
                              t.rule,
                              {},
                              ink::Cap::butt});
            y += 1;
        }
        const double middle_of_row = y + row / 2;
        d.add(label(easel, total ? strong : name_style, bar.name,
                    {names, middle_of_row + middle(name_style)}, text::Align::right));
        draw_bar(d, easel, scale, bar, middle_of_row, half);
        d.add(label(easel, total ? strong : name_style, bar.value,
                    {width, middle_of_row + middle(name_style)}, text::Align::right));
        y += row;
    }
    d.add(ink::Stroke{ink::Path::segment({scale(0), top}, {scale(0), y + 1}),
                      t.widths.axis,
                      t.text,
                      {},
                      ink::Cap::butt});
    draw_ends(d, easel, input, scale, y + tick.style.size, width);
    y += tick.leading + 1;
    if (!input.fits) {
        auto plain = t.setting(theme::Text::caption);
        const auto note =
            paragraph(easel, plain, easel.words.say("ballfigure.credit.no-fit"), width);
        d.add(note, {0, y + 1});
        y += 1 + note.size.height;
    }
    d.size = {width, y};
    return d;
}

} // namespace figure
