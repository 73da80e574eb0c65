#include "figure/flight_above.hpp"

#include "figure/callout.hpp"
#include "figure/scale.hpp"
#include "words/number.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <cmath>

namespace figure {

namespace {

constexpr double beside = 14; ///< from the ground to the words beside it

/// Places on the ground to places on paper.
struct Ground {
    const Easel& easel;
    bool upright = true;   ///< target up the page
    bool leftward = false; ///< upright, and the flights lean left: labels stand on that side
    ink::Point tee;
    double along = 1, across = 1;              ///< points a metre
    double far = 0, to_left = 0, to_right = 0; ///< metres drawn, the last two from the target line
    ink::Rect box;

    ink::Point at(double metres, double right) const {
        return upright ? ink::Point{tee.x + right * across, tee.y - metres * along}
                       : ink::Point{tee.x + metres * along, tee.y + right * across};
    }
    double wide() const { return to_left + to_right; }
    double unit() const {
        return unit::size_of_unit(unit::Kind::length, easel.words.voice().units);
    }
};

/// Sets the metres that must be shown.
void measure_ground(Ground& g, const FlightInput& input) {
    double far = 1, left = 0, right = 0;
    const auto hold = [&](const FlightLine& line) {
        for (const FlightPoint& p : line) {
            far = std::max(far, p.along);
            left = std::max(left, -p.right);
            right = std::max(right, p.right);
        }
    };
    for (const FlightRow& row : input.rows) {
        hold(row.typical);
        for (const FlightLine& line : row.shots)
            hold(line);
    }
    g.far = far * 1.05;
    const double least = std::max({far * 0.06, left * 0.25, right * 0.25});
    g.to_left = std::max(left * 1.10, least); // the empty side keeps little room
    g.to_right = std::max(right * 1.10, least);
}

/// Gives how many times sideways is stretched.
int set_scale(Ground& g, double long_room, double short_room) {
    g.along = std::min(long_room / g.far, short_room / g.wide());
    const double wide = g.wide() * g.along;
    const int stretch =
        wide < 55 ? std::clamp(static_cast<int>(std::min(short_room, 80.0) / wide), 1, 3) : 1;
    g.across = g.along * stretch;
    return stretch;
}

/// Lines of equal distance from the tee, each named at its end; they are circles seen in this
/// scale.
void draw_distances(ink::Drawing& d, const Ground& g) {
    const auto& t = g.easel.theme;
    const auto& style = t.setting(theme::Text::tick).style;
    const double far = g.far / g.unit(), room = g.far * g.along;
    const double most = std::max(2.0, room / (g.upright ? 34 : 60));
    for (const double v : ticks(0, far, pleasant_step(far, static_cast<int>(most)))) {
        if (v == 0) continue;
        const double r = v * g.unit(), from = -std::min(g.to_left, r * 0.98),
                     to = std::min(g.to_right, r * 0.98);
        std::vector<ink::Point> arc;
        for (int k = 0; k <= 24; ++k) {
            const double right = from + (to - from) * k / 24,
                         metres = std::sqrt(r * r - right * right);
            arc.push_back(g.at(metres, right));
        }
        d.add(ink::Stroke{ink::Path::polyline(arc), 0.35, t.rule, {}, ink::Cap::butt});
        const auto words = words::quantity(unit::Measure::carry, r, g.easel.words);
        if (g.upright)
            d.add(
                label(g.easel, style, words,
                      {g.leftward ? g.box.right() + 4 : g.box.x - 4, arc.front().y + middle(style)},
                      g.leftward ? text::Align::left : text::Align::right));
        else {
            ink::Words name =
                label(g.easel, style, words,
                      {arc.back().x, g.box.bottom() + t.setting(theme::Text::tick).leading},
                      text::Align::centre);
            name.at.x = std::min(name.at.x, g.box.right() + beside - 2 - name.width);
            d.add(std::move(name));
        }
    }
}

/// Distances right and left of the target line, along the near end.
void draw_sideways(ink::Drawing& d, const Ground& g) {
    const auto& t = g.easel.theme;
    const auto& tick = t.setting(theme::Text::tick);
    const double side = std::max(g.to_left, g.to_right) / g.unit();
    const double room = 2 * std::max(g.to_left, g.to_right) * g.across;
    const int most =
        std::max(g.upright ? 2 : 1, static_cast<int>(room / (g.upright ? 30 : tick.leading) / 2));
    const double step = pleasant_step(side, most);
    d.add(ink::Stroke{ink::Path::segment(g.at(0, -g.to_left), g.at(0, g.to_right)),
                      t.widths.axis,
                      t.text,
                      {},
                      ink::Cap::butt});
    for (const double v : ticks(-g.to_left / g.unit(), g.to_right / g.unit(), step)) {
        const ink::Point p = g.at(0, v * g.unit());
        const ink::Point out = g.upright ? ink::Point{0, 3} : ink::Point{-3, 0};
        d.add(ink::Stroke{ink::Path::segment(p, p + out), 0.5, t.text, {}, ink::Cap::butt});
        const auto words = words::fixed(std::abs(v), 0, g.easel.words.language());
        if (g.upright)
            d.add(label(g.easel, theme::Text::tick, words, {p.x, p.y + tick.leading},
                        text::Align::centre));
        else if (p.y > g.box.y + tick.style.size * 0.4) // clear of the words over the box
            d.add(label(g.easel, theme::Text::tick, words, {p.x - 5, p.y + middle(tick.style)},
                        text::Align::right));
    }
    d.add(ink::Stroke{
        ink::Path::segment(g.at(0, 0), g.at(g.far, 0)), t.widths.data, t.text, {}, ink::Cap::butt});
}

ink::Path traced(const Ground& g, const FlightLine& line) {
    std::vector<ink::Point> points;
    const std::size_t step = std::max<std::size_t>(1, line.size() / 24);
    for (std::size_t i = 0; i < line.size(); i += step)
        points.push_back(g.at(line[i].along, line[i].right));
    if (!line.empty()) points.push_back(g.at(line.back().along, line.back().right));
    return ink::Path::polyline(points);
}

ink::Point landing(const Ground& g, const FlightLine& line) {
    return g.at(line.back().along, line.back().right);
}

void draw_fans(ink::Drawing& d, const Ground& g, const FlightInput& input) {
    const auto& t = g.easel.theme;
    std::size_t shots = 0;
    for (const FlightRow& row : input.rows)
        shots += row.shots.size();
    const double radius = shots > 80 ? 1.6 : 2.2;
    for (const FlightRow& row : input.rows) {
        const auto dash = dash_of(row.symbol, 1);
        for (const FlightLine& line : row.shots)
            if (!line.empty())
                d.add(ink::Stroke{traced(g, line), 0.35, t.rule, dash, ink::Cap::butt});
    }
    for (const FlightRow& row : input.rows)
        for (const FlightLine& line : row.shots)
            if (!line.empty()) put(d, row.symbol, landing(g, line), radius, t.text);
}

void draw_middles(ink::Drawing& d, const Ground& g, const FlightInput& input) {
    const auto& t = g.easel.theme;
    for (const FlightRow& row : input.rows) {
        if (row.typical.empty()) continue;
        const ink::Path path = traced(g, row.typical);
        d.add(ink::Stroke{path, 4.4, ink::white, {}, ink::Cap::butt});
        d.add(ink::Stroke{path, 1.9, t.text, dash_of(row.symbol, 2.6), ink::Cap::butt});
    }
    for (const FlightRow& row : input.rows) {
        if (row.typical.empty()) continue;
        const double radius = row.symbol == Symbol::cold ? 6.2 : 4.4; // a ring in it hides nothing
        d.add(ink::Fill{ink::Path::circle(landing(g, row.typical), radius + 1.2), ink::white});
        put(d, row.symbol, landing(g, row.typical), radius, t.text);
    }
}

std::string landing_words(const Ground& g, const FlightRow& row, const std::string& between) {
    const FlightPoint& end = row.typical.back();
    const auto& w = g.easel.words;
    std::string out =
        w.say("ballfigure.flight.carry",
              {{"x", words::quantity(unit::Measure::carry, std::hypot(end.along, end.right), w)}}) +
        between + words::side(unit::Measure::offline, end.right, w);
    if (row.estimated) out += between + w.say("ballfigure.estimated");
    return out;
}

ink::Drawing words_of(const Ground& g, const FlightRow& row, double width) {
    const auto& easel = g.easel;
    auto head = easel.theme.setting(theme::Text::label);
    auto plain = easel.theme.setting(theme::Text::caption);
    const auto align = g.leftward ? text::Align::right : text::Align::left;
    const std::string words = landing_words(g, row, "\n");
    return stacked({paragraph(easel, head, row.name, width, align),
                    paragraph(easel, plain, words, width, align)});
}

std::vector<Callout> callouts(const Ground& g, const FlightInput& input, double width) {
    std::vector<Callout> out;
    for (const FlightRow& row : input.rows)
        if (!row.typical.empty())
            out.push_back({landing(g, row.typical), words_of(g, row, width), 7});
    return out;
}

double widest_distance(const Ground& g) {
    const double v = std::max(10.0, std::floor(g.far / g.unit())) * g.unit();
    return g.easel.type
        .line(words::quantity(unit::Measure::carry, v, g.easel.words),
              g.easel.theme.setting(theme::Text::tick).style)
        .width;
}

ink::Drawing scale_note(const Ground& g, int stretch, double width) {
    const auto& w = g.easel.words;
    return paragraph(g.easel, theme::Text::tick,
                     stretch == 1 ? w.say("ballfigure.flight.equal")
                                  : w.say("ballfigure.flight.stretched", {{"n", stretch}}),
                     width);
}

void draw_flights(ink::Drawing& d, const Ground& g, const FlightInput& input) {
    draw_distances(d, g);
    draw_sideways(d, g);
    draw_fans(d, g, input);
    draw_middles(d, g, input);
}

/// Draws axes, flights and callouts into the ground's box; gives the depth used.
double draw_all(ink::Drawing& d, const Ground& g, const FlightInput& input, ink::Rect column) {
    draw_flights(d, g, input);
    const auto notes = callouts(g, input, column.width);
    column.height = std::max(column.height, height_of(notes));
    put_callouts(d, notes, column, g.easel.theme.setting(theme::Text::label).leading,
                 g.easel.theme.text);
    return column.bottom();
}

/// The words at both ends, clear of callouts that reach down to `used`. Gives the y below them.
double draw_ends_upright(ink::Drawing& d, const Ground& g, double width, double used) {
    const auto& tick = g.easel.theme.setting(theme::Text::tick);
    const auto style = bold(g.easel, theme::Text::tick);
    const double free = g.tee.y + tick.leading + 2;
    const double y = (used > free ? used + 2 : free) + tick.leading;
    const auto& w = g.easel.words;
    ink::Words l = label(g.easel, style, w.say("ballfigure.flight.left"), {g.tee.x - 6, y},
                         text::Align::right);
    l.at.x = std::max(l.at.x, 0.0);
    ink::Words r = label(g.easel, style, w.say("ballfigure.flight.right"), {g.tee.x + 6, y});
    r.at.x = std::min(r.at.x, width - r.width);
    if (l.at.x + l.width + 6 > r.at.x) r.at = {l.at.x, y + tick.leading}; // too narrow for one line
    const double below = r.at.y + r.descent + 1;
    d.add(std::move(l));
    d.add(std::move(r));
    return below;
}

bool leans_left(const FlightInput& input) {
    double right = 0;
    for (const FlightRow& row : input.rows)
        if (!row.typical.empty()) right += row.typical.back().right;
    return right < 0;
}

ink::Drawing upright(Ground g, const FlightInput& input, double width, double height) {
    const auto& t = g.easel.theme;
    const double line = t.setting(theme::Text::tick).leading;
    const double left = widest_distance(g) + 6;
    const double aside =
        std::clamp(t.setting(theme::Text::caption).style.size * 10.5, 0.3 * width, 0.45 * width);
    const double plot = std::max(20.0, width - left - aside - 12);
    const double top = line + 3, foot = 3 * line + 4;
    const int stretch = set_scale(g, std::max(40.0, height - top - foot - 2 * line), plot);
    const double wide_box = g.wide() * g.across;
    g.leftward = leans_left(input);
    g.box = {g.leftward ? width - left - wide_box : left, top, wide_box, g.far * g.along};
    g.tee = {g.box.x + g.to_left * g.across, g.box.bottom()};
    ink::Drawing d;
    ink::Words target =
        label(g.easel, theme::Text::tick, g.easel.words.say("ballfigure.flight.target-line"),
              {g.tee.x, line}, text::Align::centre);
    if (g.leftward) // clear of the distances beside the box
        target.at.x = std::min(target.at.x, g.box.right() + 2 - target.width);
    else
        target.at.x = std::max(target.at.x, g.box.x - 2);
    d.add(std::move(target));
    const double room = (g.leftward ? g.box.x : width - g.box.right()) - 14;
    const double wide = std::min(aside * 1.3, room);
    const ink::Rect column{g.leftward ? g.box.x - 14 - wide : g.box.right() + 14, top, wide,
                           g.box.height};
    const double used = draw_all(d, g, input, column);
    const double below = draw_ends_upright(d, g, width, used);
    const auto note = scale_note(g, stretch, width);
    const double y = below;
    d.add(note, {0, y});
    d.size = {width, y + note.size.height};
    return d;
}

/// Where each middle shot came down: its mark, its name and the words, one under the other.
ink::Drawing landings(const Ground& g, const FlightInput& input, double width) {
    const auto& plain = g.easel.theme.setting(theme::Text::caption);
    const auto strong = bold(g.easel, theme::Text::caption);
    ink::Drawing d;
    d.size.width = width;
    double names = 0;
    for (const FlightRow& row : input.rows)
        if (!row.typical.empty())
            names = std::max(names, g.easel.type.line(row.name, strong).width);
    const double hang = 12 + names + 7;
    for (const FlightRow& row : input.rows) {
        if (row.typical.empty()) continue;
        const auto set = g.easel.type.set(landing_words(g, row, " · "), plain.style, width - hang,
                                          plain.leading);
        const double base = d.size.height + (set.lines.empty() ? 0 : set.lines.front().at.y);
        put(d, row.symbol, {4.5, base - middle(plain.style)}, 3.4, g.easel.theme.text);
        d.add(label(g.easel, strong, row.name, {12, base}));
        for (const auto& line : set.lines)
            d.add(ink::moved(line, {hang, d.size.height}));
        d.size.height += set.height;
    }
    return d;
}

ink::Drawing lying(Ground g, const FlightInput& input, double width, double height) {
    const auto& t = g.easel.theme;
    const auto& tick = t.setting(theme::Text::tick);
    const auto style = bold(g.easel, theme::Text::tick);
    const double left = 9 + g.easel.type.line("000", tick.style).width;
    const double aside =
        std::clamp(t.setting(theme::Text::caption).style.size * 10.5, 0.18 * width, 0.45 * width);
    const bool under = width - left - aside - 21 < 0.55 * width; // words beside leave too little
    const ink::Drawing words = under ? landings(g, input, width) : ink::Drawing{};
    const double top = tick.leading + 3, foot = 3 * tick.leading + 6 + words.size.height;
    const double plot = under ? width - left - 10 : width - left - aside - 21;
    const int stretch = set_scale(g, std::max(40.0, plot), std::max(30.0, height - top - foot));
    g.tee = {left, top + g.to_left * g.across};
    g.box = {left, top, g.far * g.along, g.wide() * g.across};
    ink::Drawing d;
    const auto& w = g.easel.words;
    d.add(label(g.easel, style, w.say("ballfigure.flight.left-up"), {0, tick.style.size}));
    const ink::Rect column{g.box.right() + beside, top, width - g.box.right() - beside,
                           g.box.height};
    double used = g.box.bottom();
    if (under)
        draw_flights(d, g, input);
    else
        used = draw_all(d, g, input, column);
    double y = g.box.bottom() + 2 * tick.leading + 2;
    const ink::Words end = label(g.easel, style, w.say("ballfigure.flight.right-down"), {0, y});
    d.add(end);
    const ink::Drawing note = scale_note(g, stretch, under ? width : std::max(g.box.right(), 90.0)),
                       on_line = scale_note(g, stretch, width - end.width - 8);
    if (under && on_line.size.height < tick.leading * 1.5) {
        d.add(on_line, {end.width + 8, y + 3 - tick.leading});
        y += 3;
    } else {
        d.add(note, {0, y += 3});
        y += note.size.height;
    }
    if (under) d.add(words, {0, y + 3});
    d.size = {width, std::max(used, y + (under ? 3 + words.size.height : 0))};
    return d;
}

} // namespace

ink::Drawing flight_above(const Easel& easel, const FlightInput& input, double width,
                          double height) {
    Ground g{easel};
    measure_ground(g, input);
    g.upright = width <= height * 1.15;
    ink::Drawing d = g.upright ? upright(g, input, width, height) : lying(g, input, width, height);
    d.message = input.message;
    return d;
}

} // namespace figure
