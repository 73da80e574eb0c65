#include "figure/progress.hpp"

#include "figure/callout.hpp"
#include "figure/dots.hpp"
#include "figure/scale.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <chrono>
#include <cmath>

namespace figure {

namespace {

/// Days as rows that all panels share, in points below the panel's top.
struct Calendar {
    std::vector<words::Date> dates; ///< ascending, each once
    std::vector<double> y;          ///< middles of rows
    std::vector<double> open;       ///< middles of rows that no day has taken yet

    double operator()(words::Date date) const {
        const auto at = std::ranges::lower_bound(dates, date);
        return y[static_cast<std::size_t>(at - dates.begin())];
    }
};

double day(words::Date date) {
    return static_cast<double>(std::chrono::sys_days(date).time_since_epoch().count());
}

Calendar calendar(const ProgressInput& input, double row, double height) {
    Calendar c;
    for (const ProgressMeasure& m : input.measures)
        for (const ProgressBlock& block : m.blocks)
            c.dates.push_back(block.date);
    std::ranges::sort(c.dates);
    const auto twice = std::ranges::unique(c.dates);
    c.dates.erase(twice.begin(), twice.end());
    if (input.places >= std::max<std::size_t>(c.dates.size(), 1)) {
        const double pitch = height / static_cast<double>(input.places);
        for (std::size_t i = 0; i < input.places; ++i)
            (i < c.dates.size() ? c.y : c.open).push_back((static_cast<double>(i) + 0.5) * pitch);
        return c;
    }
    if (c.dates.empty()) return c;
    const double first = day(c.dates.front()), span = std::max(1.0, day(c.dates.back()) - first);
    std::vector<double> wishes;
    for (const words::Date date : c.dates)
        wishes.push_back((day(date) - first) / span * std::max(0.0, height - row));
    const std::vector<double> sizes(wishes.size(), row);
    for (const double start : spread_apart(wishes, sizes, 0, 0, height))
        c.y.push_back(start + row / 2);
    return c;
}

std::vector<ProgressBlock> cold_tests(const ProgressMeasure& m) {
    std::vector<ProgressBlock> cold;
    std::ranges::copy_if(m.blocks, std::back_inserter(cold),
                         [](const ProgressBlock& b) { return b.symbol == Symbol::cold; });
    std::ranges::stable_sort(cold, {}, &ProgressBlock::date);
    return cold;
}

std::string verdict_of(const Easel& easel, const ProgressMeasure& m) {
    const auto cold = cold_tests(m);
    if (cold.size() < tests_for_progress)
        return easel.words.say("ballfigure.progress.too-early", {{"n", cold.size()}});
    return easel.words.say("ballfigure.progress.latest",
                           {{"x", words::side_short(m.measure, cold.back().median, easel.words)}});
}

std::string title_of(const Easel& easel, const ProgressMeasure& m) {
    std::string key(unit::row(m.measure).key);
    std::ranges::replace(key, ' ', '-');
    return easel.words.say("measure." + key);
}

Scale scale_of(const ProgressMeasure& m, double from, double to) {
    if (m.axis) return {m.axis->first, m.axis->second, from, to};
    std::vector<double> values;
    for (const ProgressBlock& b : m.blocks)
        values.insert(values.end(), {b.median, b.lower, b.upper});
    if (m.wanted) values.insert(values.end(), {m.wanted->first, m.wanted->second});
    if (unit::row(m.measure).sided) return centred(values, from, to, 2);
    return fitted(values, from, to, 3, 0.1);
}

struct Pane {
    const Easel& easel;
    const ProgressMeasure& measure;
    const Calendar& days;
    Scale scale;
    double top = 0, bottom = 0, left = 0, right = 0;
};

double clipped(const Pane& p, double value) {
    return std::clamp(p.scale(value), p.left + 4, p.right - 4);
}

void draw_frame(ink::Drawing& d, const Pane& p) {
    const auto& t = p.easel.theme;
    const auto& tick = t.setting(theme::Text::tick);
    if (p.measure.wanted) {
        const double l = std::clamp(p.scale(p.measure.wanted->first), p.left, p.right);
        const double r = std::clamp(p.scale(p.measure.wanted->second), p.left, p.right);
        hatch(d, {l, p.top, r - l, p.bottom - p.top}, 4, 0.35, t.rule);
    }
    const bool sided = unit::row(p.measure.measure).sided;
    if (sided && p.scale.holds(0))
        d.add(ink::Stroke{ink::Path::segment({p.scale(0), p.top}, {p.scale(0), p.bottom}),
                          t.widths.axis,
                          t.text,
                          {},
                          ink::Cap::butt});
    for (const auto* rows : {&p.days.y, &p.days.open})
        for (const double y : *rows)
            d.add(ink::Stroke{ink::Path::segment({p.left, p.top + y}, {p.right, p.top + y}),
                              0.35,
                              t.rule,
                              {0.8, 2.4},
                              ink::Cap::butt});
    d.add(ink::Stroke{ink::Path::segment({p.left, p.bottom}, {p.right, p.bottom}),
                      t.widths.axis,
                      t.text,
                      {},
                      ink::Cap::butt});
    const double unit =
        unit::size_of_unit(unit::row(p.measure.measure).kind, p.easel.words.voice().units);
    const double least = p.scale.least / unit, most = p.scale.most / unit;
    double end = -1e9;
    for (const double v : ticks(least, most, pleasant_step(most - least, 3))) {
        const double x = p.scale(v * unit);
        d.add(ink::Stroke{
            ink::Path::segment({x, p.bottom}, {x, p.bottom + 3}), 0.5, t.text, {}, ink::Cap::butt});
        ink::Words w = label(p.easel, theme::Text::tick, tick_text(p.easel, p.measure.measure, v),
                             {x, p.bottom + tick.leading}, text::Align::centre);
        w.at.x = std::clamp(w.at.x, p.left, p.right - w.width);
        if (w.at.x < end + 3) continue;
        end = w.at.x + w.width;
        d.add(std::move(w));
    }
    const double y = p.bottom + 2 * tick.leading;
    if (sided) {
        const auto strong = bold(p.easel, theme::Text::tick);
        d.add(label(p.easel, strong, p.easel.words.say("ballfigure.progress.left"), {p.left, y}));
        d.add(label(p.easel, strong, p.easel.words.say("ballfigure.progress.right"), {p.right, y},
                    text::Align::right));
        return;
    }
    d.add(label(p.easel, theme::Text::tick,
                p.easel.words.say("figure.axis-unit",
                                  {{"unit", unit::symbol(unit::row(p.measure.measure).kind,
                                                         p.easel.words.voice().units)}}),
                {(p.left + p.right) / 2, y}, text::Align::centre));
}

/// Middle halves as bars, middle shots as symbols. Blocks of one day step apart a little.
void draw_blocks(ink::Drawing& d, const Pane& p) {
    const auto& t = p.easel.theme;
    const auto cold = cold_tests(p.measure);
    if (cold.size() >= tests_for_progress) {
        std::vector<ink::Point> line;
        for (const ProgressBlock& b : cold)
            line.push_back({clipped(p, b.median), p.top + p.days(b.date)});
        d.add(ink::Stroke{ink::Path::polyline(line), t.widths.data, t.text});
    }
    for (const ProgressBlock& b : p.measure.blocks) {
        const bool test = b.symbol == Symbol::cold;
        const double step = b.symbol == Symbol::before ? -4 : b.symbol == Symbol::after ? 4 : 0;
        const double y = p.top + p.days(b.date) + step;
        const double l = clipped(p, b.lower), r = clipped(p, b.upper);
        if (r > l)
            d.add(ink::Stroke{
                ink::Path::segment({l, y}, {r, y}), test ? 2.2 : 0.8, t.text, {}, ink::Cap::butt});
        put(d, b.symbol, {clipped(p, b.median), y}, test ? 4.4 : 2.6, t.text);
        if (p.scale.holds(b.median)) continue;
        const double way = b.median > p.scale.most ? 1 : -1, x = clipped(p, b.median) + way * 5;
        arrow(d, {x - way * 1, y}, {x + way * 6, y}, t.widths.data, 4, t.text);
    }
}

/// The days' names; with places, the weeks between them and rules for days to come.
void draw_dates(ink::Drawing& d, const Easel& easel, const Calendar& days, double top, double width,
                bool places) {
    const auto& setting = easel.theme.setting(theme::Text::tick);
    auto style = setting.style;
    style.colour = easel.theme.text;
    for (std::size_t i = 0; i < days.dates.size(); ++i) {
        d.add(label(easel, style, words::date_long(days.dates[i], easel.words),
                    {0, top + days.y[i] + middle(style)}));
        if (!places || i == 0 || days.y[i] - days.y[i - 1] < 2 * setting.leading) continue;
        const auto weeks = std::lround((day(days.dates[i]) - day(days.dates[i - 1])) / 7);
        if (weeks > 0)
            d.add(label(easel, theme::Text::tick,
                        easel.words.say("ballfigure.progress.weeks", {{"n", weeks}}),
                        {0, top + (days.y[i] + days.y[i - 1]) / 2 + middle(style)}));
    }
    for (const double y : days.open)
        d.add(ink::Stroke{ink::Path::segment({0, top + y + 4}, {width, top + y + 4}),
                          easel.theme.widths.rule,
                          easel.theme.rule,
                          {},
                          ink::Cap::butt});
}

double dates_width(const Easel& easel, const Calendar& days) {
    double width = 0;
    for (const words::Date date : days.dates)
        width = std::max(width, easel.type
                                    .line(words::date_long(date, easel.words),
                                          easel.theme.setting(theme::Text::tick).style)
                                    .width);
    return width;
}

} // namespace

namespace {

/// Where the panels stand: in bands from the top, shares of the width inside a band.
struct Plan {
    std::vector<double> left, right;
    std::vector<std::size_t> band;
    std::size_t bands = 1;
};

Plan plan(const ProgressInput& input, double from, double width, double least, double gap) {
    Plan plan;
    double shares = 0;
    for (const ProgressMeasure& m : input.measures)
        shares += m.share;
    const double room = std::max(1.0, std::floor((width - from + gap) / (least + gap)));
    plan.bands = static_cast<std::size_t>(std::max(1.0, std::ceil(shares / room)));
    const double beside = std::max(1.0, std::ceil(shares / static_cast<double>(plan.bands)));
    const double each = (width - from + gap) / beside;
    double used = 0;
    std::size_t band = 0;
    for (const ProgressMeasure& m : input.measures) {
        if (used > 0 && used + m.share > beside + 1e-9) ++band, used = 0;
        plan.left.push_back(from + used * each);
        used += m.share;
        plan.right.push_back(from + used * each - gap);
        plan.band.push_back(band);
    }
    plan.bands = band + 1;
    return plan;
}

} // namespace

std::pair<double, double> year_axis(unit::Measure measure, double first_median,
                                    const unit::Units& units) {
    using unit::Measure;
    const auto& row = unit::row(measure);
    const double one = unit::size_of_unit(row.kind, units);
    if (row.sided) {
        double reach = 15; // degrees
        if (measure == Measure::axis || row.kind == unit::Kind::length) reach = 40;
        return {-reach * one, reach * one};
    }
    double width = 20, step = 5; // degrees and speeds
    if (row.kind == unit::Kind::length) width = 80, step = 10;
    if (row.kind == unit::Kind::spin) width = 4000, step = 500;
    const double middle = std::round(first_median / one / step) * step;
    return {(middle - width / 2) * one, (middle + width / 2) * one};
}

ink::Drawing progress(const Easel& easel, const ProgressInput& input, double width, double height) {
    const auto& t = easel.theme;
    const auto& tick = t.setting(theme::Text::tick);
    const double row = tick.leading + 5, foot = 2 * tick.leading + 4, gap = 10;
    const auto probe = calendar(input, row, 0);
    const double dates = std::max(dates_width(easel, probe), tick.style.size * 7) + 8;
    const Plan panes = plan(input, dates, width, tick.style.size * 7.8, gap);
    auto head = t.setting(theme::Text::label);
    auto plain = tick;
    plain.style.colour = t.text;
    // with places the panels start at the same height on every sheet
    double heads = input.places > 0 ? head.leading + 3 * plain.leading + 3 : 0;
    for (std::size_t i = 0; i < input.measures.size(); ++i) {
        const double pane = panes.right[i] - panes.left[i];
        const ProgressMeasure& m = input.measures[i];
        heads = std::max(heads,
                         paragraph(easel, head, title_of(easel, m), pane).size.height +
                             paragraph(easel, plain, verdict_of(easel, m), pane).size.height + 3);
    }
    const bool hatched = std::ranges::any_of(
        input.measures, [](const ProgressMeasure& m) { return m.wanted.has_value(); });
    const double note = hatched ? tick.leading + 2 : 0;
    const double each = (height - note) / static_cast<double>(panes.bands);
    const double body =
        std::max({each - heads - foot - gap,
                  row * static_cast<double>(std::max(probe.dates.size(), input.places)), 2 * row});
    const Calendar days = calendar(input, row, body);

    ink::Drawing d;
    d.message = input.message;
    double top = 0;
    for (std::size_t i = 0; i < input.measures.size(); ++i) {
        const ProgressMeasure& m = input.measures[i];
        top = static_cast<double>(panes.band[i]) * (heads + body + foot + gap);
        const double left = panes.left[i], right = panes.right[i];
        const auto title = paragraph(easel, head, title_of(easel, m), right - left);
        d.add(title, {left, top});
        d.add(paragraph(easel, plain, verdict_of(easel, m), right - left),
              {left, top + title.size.height});
        if (i == 0 || panes.band[i] != panes.band[i - 1])
            draw_dates(d, easel, days, top + heads, dates - 8, input.places > 0);
        Pane p{easel, m, days, scale_of(m, left + 4, right - 4)};
        p.top = top + heads, p.bottom = p.top + body;
        p.left = left, p.right = right;
        draw_frame(d, p);
        draw_blocks(d, p);
    }
    const double end = input.measures.empty() ? 0 : top + heads + body + foot;
    if (hatched)
        d.add(label(easel, theme::Text::tick, easel.words.say("ballfigure.progress.wanted"),
                    {0, end + tick.style.size}));
    d.size = {width, end + note};
    return d;
}

} // namespace figure
