#include "figure/flight_side.hpp"

#include "figure/callout.hpp"
#include "figure/scale.hpp"
#include "words/number.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <cmath>

namespace figure {

namespace {

struct View {
    const Easel& easel;
    const FlightInput& input;
    double tee = 0, ground = 0;   ///< places, points
    double along = 1, upward = 1; ///< points a metre
    double far = 0, high = 0;     ///< metres drawn

    ink::Point at(const FlightPoint& p) const {
        return {tee + std::hypot(p.along, p.right) * along, ground - p.up * upward};
    }
    double unit() const {
        return unit::size_of_unit(unit::Kind::length, easel.words.voice().units);
    }
};

const FlightPoint& apex(const FlightLine& line) {
    return *std::ranges::max_element(line, {}, &FlightPoint::up);
}

std::vector<ink::Point> places(const View& v, const FlightLine& line) {
    std::vector<ink::Point> points;
    const std::size_t step = std::max<std::size_t>(1, line.size() / 48);
    for (std::size_t i = 0; i < line.size(); i += step)
        points.push_back(v.at(line[i]));
    if (!line.empty()) points.push_back(v.at(line.back()));
    return points;
}

void draw_ground(ink::Drawing& d, const View& v, double to) {
    const auto& t = v.easel.theme;
    const auto& tick = t.setting(theme::Text::tick);
    const double far = v.far / v.unit();
    const double room = v.far * v.along / (tick.style.size * 4.2);
    d.add(ink::Stroke{ink::Path::segment({v.tee - 4, v.ground}, {to, v.ground}),
                      t.widths.axis,
                      t.text,
                      {},
                      ink::Cap::butt});
    for (const double k : ticks(0, far, pleasant_step(far, std::max(2, static_cast<int>(room))))) {
        const double x = v.tee + k * v.unit() * v.along;
        d.add(ink::Stroke{
            ink::Path::segment({x, v.ground}, {x, v.ground + 3}), 0.5, t.text, {}, ink::Cap::butt});
        const auto words = k == 0
                               ? words::fixed(0, 0, v.easel.words.language())
                               : words::quantity(unit::Measure::carry, k * v.unit(), v.easel.words);
        d.add(label(v.easel, theme::Text::tick, words, {x, v.ground + tick.leading + 1.5},
                    text::Align::centre));
    }
}

void draw_curves(ink::Drawing& d, const View& v) {
    const auto& t = v.easel.theme;
    for (const FlightRow& row : v.input.rows) {
        if (row.typical.empty()) continue;
        const ink::Path path = ink::Path::polyline(places(v, row.typical));
        d.add(ink::Stroke{path, 3, ink::white, {}, ink::Cap::butt});
        d.add(ink::Stroke{path, 1.7, t.text, dash_of(row.symbol, 2.4), ink::Cap::butt});
    }
    for (const FlightRow& row : v.input.rows) {
        if (row.typical.empty()) continue;
        for (const ink::Point at : {v.at(apex(row.typical)), v.at(row.typical.back())}) {
            d.add(ink::Fill{ink::Path::circle(at, 5.4), ink::white});
            put(d, row.symbol, at, 4, t.text);
        }
    }
}

/// Heights beside the highest points, on free paper, each with a line to its own. Draws none and
/// gives false when there is no room for all.
bool draw_heights(ink::Drawing& d, const View& v, const ink::Rect& room) {
    const auto style = bold(v.easel, theme::Text::tick);
    std::vector<const FlightRow*> rows;
    std::vector<ink::Rect> taken;
    for (const FlightRow& row : v.input.rows) {
        if (row.typical.empty()) continue;
        rows.push_back(&row);
        take_line(taken, places(v, row.typical), 3);
        const ink::Point top = v.at(apex(row.typical));
        taken.push_back({top.x - 6, top.y - 6, 12, 12});
    }
    if (rows.size() > 2) return false; // a leader would cross a name
    std::ranges::stable_sort(rows, std::ranges::greater{},
                             [](const FlightRow* r) { return apex(r->typical).up; });
    ink::Drawing heights;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const ink::Point top = v.at(apex(rows[i]->typical));
        ink::Words w = v.easel.type.line(
            v.easel.words.say("ballfigure.flight.apex",
                              {{"name", rows[i]->name},
                               {"x", words::quantity(unit::Measure::apex, apex(rows[i]->typical).up,
                                                     v.easel.words)}}),
            style);
        const ink::Size size{w.width, w.ascent + w.descent};
        const double y = i == 0 ? top.y - 8 - size.height : top.y + 8;
        const auto place = free_place(size, {top.x - size.width / 2, y}, room, taken);
        if (!place) return false;
        w.at = {place->x, place->y + w.ascent};
        const ink::Rect box{place->x, place->y, size.width, size.height};
        const ink::Point near{std::clamp(top.x, box.x, box.right()),
                              std::clamp(top.y, box.y, box.bottom())};
        const double away = std::hypot(near.x - top.x, near.y - top.y);
        if (away > 12)
            heights.add(ink::Stroke{ink::Path::segment(near, top + (near - top) * (5 / away)),
                                    0.5,
                                    v.easel.theme.text,
                                    {},
                                    ink::Cap::butt});
        taken.push_back(box.inset(-1.5));
        heights.add(std::move(w));
    }
    d.add(heights, {0, 0});
    return true;
}

std::string carry_of(const View& v, const FlightRow& row, bool with_height) {
    const FlightPoint& end = row.typical.back();
    const auto& w = v.easel.words;
    words::Holes holes{
        {"name", row.name},
        {"x", words::quantity(unit::Measure::carry, std::hypot(end.along, end.right), w)}};
    if (!with_height) return w.say("ballfigure.flight.lands", holes);
    holes.emplace_back("y", words::quantity(unit::Measure::apex, apex(row.typical).up, w));
    return w.say("ballfigure.flight.lands-high", holes);
}

/// Carries below the ground's ticks, each under its landing spot, apart from one another; one a
/// line where they do not fit beside one another. Gives the y below them.
double draw_carries(ink::Drawing& d, const View& v, double width, bool with_heights) {
    const auto style = bold(v.easel, theme::Text::tick);
    std::vector<const FlightRow*> rows;
    for (const FlightRow& row : v.input.rows)
        if (!row.typical.empty()) rows.push_back(&row);
    std::ranges::stable_sort(rows, {},
                             [&](const FlightRow* r) { return v.at(r->typical.back()).x; });
    std::vector<ink::Words> words;
    std::vector<double> wishes, sizes;
    double total = -10;
    for (const FlightRow* row : rows) {
        words.push_back(v.easel.type.line(carry_of(v, *row, with_heights), style));
        wishes.push_back(v.at(row->typical.back()).x - words.back().width / 2);
        sizes.push_back(words.back().width);
        total += sizes.back() + 10;
    }
    const double line = v.easel.theme.setting(theme::Text::tick).leading + 1;
    double y = v.ground + line + 4;
    if (total <= width) {
        const auto starts = spread_apart(wishes, sizes, 10, 0, width);
        for (std::size_t i = 0; i < words.size(); ++i) {
            words[i].at = {starts[i], y + line};
            d.add(std::move(words[i]));
        }
        return y + (words.empty() ? 0 : line + 3);
    }
    for (const ink::Words& one : words) {
        const auto block = paragraph(v.easel, {style, line}, one.text, width, text::Align::right);
        d.add(block, {0, y});
        y += block.size.height;
    }
    return y + 2;
}

} // namespace

ink::Drawing flight_side(const Easel& easel, const FlightInput& input, double width,
                         double height) {
    const auto& tick = easel.theme.setting(theme::Text::tick);
    View v{easel, input};
    v.far = 1, v.high = 0.5;
    for (const FlightRow& row : input.rows) {
        for (const FlightPoint& p : row.typical) {
            v.far = std::max(v.far, std::hypot(p.along, p.right));
            v.high = std::max(v.high, p.up);
        }
    }
    v.far *= 1.04;
    const double edge = tick.style.size * 2, head = tick.leading + 12;
    v.along = std::min((width - 2 * edge) / v.far, std::max(30.0, height) / v.high);
    const double tall = v.high * v.along;
    const int stretch =
        tall < 40 ? std::clamp(static_cast<int>(std::min(height, 60.0) / tall), 1, 3) : 1;
    v.upward = v.along * stretch;
    v.tee = edge;
    v.ground = head + v.high * v.upward;
    const double used = std::min(width, edge * 2 + v.far * v.along);

    ink::Drawing d;
    d.message = input.message;
    draw_ground(d, v, used - edge + 4);
    draw_curves(d, v);
    const bool told = draw_heights(d, v, {0, 0, width, v.ground - 3});
    const double below = draw_carries(d, v, width, !told);
    const auto note =
        paragraph(easel, theme::Text::tick,
                  stretch == 1 ? easel.words.say("ballfigure.flight.true")
                               : easel.words.say("ballfigure.flight.taller", {{"n", stretch}}),
                  width);
    d.add(note, {0, below});
    d.size = {width, below + note.size.height};
    return d;
}

} // namespace figure
