#include "figure/scatter.hpp"

#include "figure/scale.hpp"
#include "words/number.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace figure {

namespace {

struct Square {
    const Easel& easel;
    const ScatterInput& input;
    ink::Rect box;
    double reach = 10;

    double x(double face) const { return box.x + (face + reach) / (2 * reach) * box.width; }
    double y(double path) const { return box.bottom() - (path + reach) / (2 * reach) * box.height; }
    ink::Point at(double face, double path) const { return {x(face), y(path)}; }
};

double fitted_reach(const ScatterInput& input) {
    if (input.reach > 0) return input.reach;
    double reach = 8;
    for (const auto& row : input.rows)
        for (const auto& shot : row.shots)
            if (!shot.set_aside)
                reach = std::max({reach, std::abs(shot.face) + 1, std::abs(shot.path) + 1});
    return std::min(24.0, std::ceil(reach / 4) * 4);
}

/// The part of the line a·face + b·path = c inside the square, if any.
std::optional<std::pair<ink::Point, ink::Point>> cut(const Square& s, double a, double b,
                                                     double c) {
    std::vector<ink::Point> ends; // in degrees
    const double r = s.reach, slack = 1e-9;
    const auto take = [&](double face, double path) {
        if (std::abs(face) > r + slack || std::abs(path) > r + slack) return;
        for (const auto& e : ends)
            if (std::hypot(e.x - face, e.y - path) < 1e-6) return;
        ends.push_back({face, path});
    };
    for (const double edge : {-r, r}) {
        if (b != 0) take(edge, (c - a * edge) / b);
        if (a != 0) take((c - b * edge) / a, edge);
    }
    if (ends.size() < 2) return std::nullopt;
    if (ends[0].y > ends[1].y) std::swap(ends[0], ends[1]);
    return std::pair{s.at(ends[0].x, ends[0].y), s.at(ends[1].x, ends[1].y)};
}

void add_line(ink::Drawing& d, const std::pair<ink::Point, ink::Point>& ends, double width,
              ink::Colour colour, std::vector<double> dash = {}) {
    d.add(ink::Stroke{ink::Path::segment(ends.first, ends.second), width, colour, std::move(dash),
                      ink::Cap::butt});
}

/// Lines along which the ball starts alike, named along the top.
void draw_start_lines(ink::Drawing& d, const Square& s) {
    const auto& t = s.easel.theme;
    const double share = s.input.face_share, step = s.reach > 10 ? 10 : 5;
    const auto style = t.setting(theme::Text::tick).style;
    double free = s.box.x - 12; // from here on nothing stands yet
    for (double start = -2 * step; start <= 2 * step; start += step) {
        const auto ends = cut(s, share, 1 - share, start);
        if (!ends) continue;
        add_line(d, *ends, start == 0 ? t.widths.data : 0.4, start == 0 ? t.text : t.rule);
        if (ends->second.y > s.box.y + 0.5) continue; // does not reach the top edge
        const std::string key = start == 0 ? "none" : start < 0 ? "left" : "right";
        ink::Words w = label(
            s.easel, style,
            s.easel.words.say("scatter.start." + key,
                              {{"x", words::fixed(std::abs(start), 0, s.easel.words.language())}}),
            {ends->second.x, s.box.y - 4}, text::Align::centre);
        w.at.x = std::min(w.at.x, s.box.right() - w.width);
        if (w.at.x < free) continue; // it would stand over the one before
        free = w.at.x + w.width + 4;
        d.add(std::move(w));
    }
}

/// Lines of equal curve; the middle one is face = path, where the ball turns little.
void draw_curve_lines(ink::Drawing& d, const Square& s) {
    const auto& t = s.easel.theme;
    if (const auto ends = cut(s, 1, -1, 0)) add_line(d, *ends, t.widths.data, t.text, {5, 3});
    const auto metres = curve_step(s.easel, s.input);
    if (!metres) return;
    const double step = *metres / *s.input.curve_per_degree; // degrees
    for (const double k : {-2.0, -1.0, 1.0, 2.0}) {
        const auto ends = cut(s, 1, -1, k * step);
        if (!ends) continue;
        add_line(d, *ends, 0.4, t.rule, {2.2, 2.2});
    }
}

/// How many shots these lines would stand on.
std::size_t shots_under(const Square& s, const std::vector<ink::Words>& lines) {
    std::size_t n = 0;
    for (const auto& row : s.input.rows)
        for (const auto& shot : row.shots) {
            const ink::Point at = s.at(shot.face, shot.path);
            const ink::Rect dot{at.x - 4, at.y - 4, 8, 8};
            n += std::ranges::any_of(lines, [&](const auto& w) { return w.box().overlaps(dot); });
        }
    return n;
}

/// Names the wanted range at its foot or head, where the word is free of the others.
std::optional<ink::Rect> name_wanted(ink::Drawing& d, const Square& s, ink::Rect band,
                                     const std::vector<ink::Rect>& taken) {
    const auto& tick = s.easel.theme.setting(theme::Text::tick);
    ink::Style style = tick.style;
    style.colour = s.easel.theme.text;
    for (const double y : {s.box.bottom() - 4, s.box.y + tick.leading, s.box.bottom() - 34}) {
        ink::Words w = label(s.easel, style, s.easel.words.say("figure.wanted"),
                             {band.x + band.width / 2, y}, text::Align::centre);
        const ink::Rect box = w.box().inset(-1);
        if (w.width > band.width || shots_under(s, {w}) > 0) continue;
        if (std::ranges::any_of(taken, [&](const ink::Rect& r) { return r.overlaps(box); }))
            continue;
        d.add(ink::Fill{ink::Path::rect(box), ink::white});
        d.add(std::move(w));
        return box;
    }
    return std::nullopt;
}

/// What the ball does in each of the four fields between the two bold lines.
std::vector<ink::Rect> draw_fields(ink::Drawing& d, const Square& s) {
    std::vector<ink::Rect> boxes;
    const auto style = [&] {
        auto st = s.easel.theme.setting(theme::Text::tick).style;
        st.colour = s.easel.theme.text;
        return st;
    }();
    const double r = s.reach, leading = style.size * 1.2;
    struct Field {
        const char* key;
        text::Align align;
        std::array<ink::Point, 3> places; ///< face and path in degrees, the best first
    };
    const std::array<Field, 4> fields{
        {{"right-right",
          text::Align::right,
          {{{0.96 * r, -0.30 * r}, {0.96 * r, -0.62 * r}, {0.96 * r, -0.86 * r}}}},
         {"right-left",
          text::Align::centre,
          {{{0.50 * r, 0.90 * r}, {0.42 * r, 0.70 * r}, {0.30 * r, 0.55 * r}}}},
         {"left-left",
          text::Align::left,
          {{{-0.96 * r, 0.30 * r}, {-0.96 * r, 0.62 * r}, {-0.96 * r, 0.90 * r}}}},
         {"left-right",
          text::Align::centre,
          {{{-0.50 * r, -0.84 * r}, {-0.42 * r, -0.66 * r}, {-0.30 * r, -0.52 * r}}}}}};
    for (const Field& f : fields) {
        const std::string key = std::string("scatter.field.") + f.key;
        const auto at_place = [&](const ink::Point& place) {
            std::vector<ink::Words> lines;
            const ink::Point at = s.at(place.x, place.y);
            lines.push_back(label(s.easel, style, s.easel.words.say(key + ".start"), at, f.align));
            lines.push_back(label(s.easel, style, s.easel.words.say(key + ".turn"),
                                  {at.x, at.y + leading}, f.align));
            return lines;
        };
        auto best = at_place(f.places.front());
        std::size_t least = shots_under(s, best);
        for (const auto& place : f.places) {
            auto lines = at_place(place);
            if (const auto n = shots_under(s, lines); n < least) least = n, best = std::move(lines);
        }
        for (auto& line : best) {
            boxes.push_back(line.box());
            d.add(ink::Fill{ink::Path::rect(line.box().inset(-0.6)), ink::white});
            d.add(std::move(line));
        }
    }
    return boxes;
}

void draw_axes(ink::Drawing& d, const Square& s) {
    const auto& t = s.easel.theme;
    const auto& tick = t.setting(theme::Text::tick);
    d.add(ink::Stroke{ink::Path::rect(s.box), t.widths.axis, t.text, {}, ink::Cap::butt});
    add_line(d, {s.at(0, -s.reach), s.at(0, s.reach)}, 0.35, t.rule);
    add_line(d, {s.at(-s.reach, 0), s.at(s.reach, 0)}, 0.35, t.rule);
    for (const double v : ticks(-s.reach, s.reach, s.reach > 12 ? 8 : 4)) {
        const std::string text = words::fixed(std::abs(v), 0, s.easel.words.language());
        d.add(
            ink::Stroke{ink::Path::segment({s.x(v), s.box.bottom()}, {s.x(v), s.box.bottom() + 3}),
                        0.5,
                        t.text,
                        {},
                        ink::Cap::butt});
        d.add(ink::Stroke{ink::Path::segment({s.box.x - 3, s.y(v)}, {s.box.x, s.y(v)}),
                          0.5,
                          t.text,
                          {},
                          ink::Cap::butt});
        d.add(label(s.easel, theme::Text::tick, text, {s.x(v), s.box.bottom() + tick.leading},
                    text::Align::centre));
        d.add(label(s.easel, theme::Text::tick, text, {s.box.x - 5, s.y(v) + middle(tick.style)},
                    text::Align::right));
    }
    const auto style = bold(s.easel, theme::Text::tick);
    const double y = s.box.bottom() + 2 * tick.leading + 1;
    d.add(label(s.easel, style, s.easel.words.say("scatter.face.left"), {s.box.x, y}));
    d.add(label(s.easel, style, s.easel.words.say("scatter.face.right"), {s.box.right(), y},
                text::Align::right));
    const auto width = [&](const char* key) {
        return s.easel.type.line(s.easel.words.say(key), style).width;
    };
    // both names share one edge of the square
    const bool long_names =
        width("scatter.path.left") + width("scatter.path.right") + 8 <= s.box.height;
    const auto upright = [&](const char* key, double from, text::Align align) {
        ink::Words w = s.easel.type.line(s.easel.words.say(key), style);
        w.turn = 90;
        const double shift = align == text::Align::right ? w.width : 0;
        w.at = {tick.style.size, from + shift};
        d.add(std::move(w));
    };
    upright(long_names ? "scatter.path.left" : "scatter.path.left.short", s.box.bottom(),
            text::Align::left);
    upright(long_names ? "scatter.path.right" : "scatter.path.right.short", s.box.y,
            text::Align::right);
}

/// A shot beyond the axes stands at the edge as an arrow that points to where it is.
void draw_shot(ink::Drawing& d, const Square& s, Symbol symbol, const ScatterShot& shot) {
    const auto& t = s.easel.theme;
    const double inner = s.reach * 0.985;
    const double face = std::clamp(shot.face, -inner, inner),
                 path = std::clamp(shot.path, -inner, inner);
    const ink::Point at = s.at(face, path);
    if (face == shot.face && path == shot.path) {
        put(d, shot.set_aside ? Symbol::set_aside : symbol, at, 2.6, t.text);
        return;
    }
    const double dx = shot.face - face, dy = path - shot.path, n = std::hypot(dx, dy);
    arrow(d, at - ink::Point{dx / n, dy / n} * 9, at, 1.0, 5, t.text);
}

/// Middle shots, larger, named, with an arrow from the first to the next.
void draw_middles(ink::Drawing& d, const Square& s, std::vector<ink::Rect> taken) {
    const auto& t = s.easel.theme;
    std::vector<const ScatterRow*> rows;
    for (const auto& row : s.input.rows)
        if (!row.shots.empty()) rows.push_back(&row);
    const auto of = [&](Symbol symbol) -> const ScatterRow* {
        for (const auto* row : rows)
            if (row->symbol == symbol) return row;
        return nullptr;
    };
    if (const auto* from = of(Symbol::before), *to = of(Symbol::after); from && to) {
        const ink::Point a = s.at(from->face, from->path), b = s.at(to->face, to->path);
        if (const double n = std::hypot(b.x - a.x, b.y - a.y); n >= 14) {
            const ink::Point u = (b - a) * (1 / n);
            d.add(ink::Stroke{
                ink::Path::segment(a + u * 6, b - u * 10), 4.2, ink::white, {}, ink::Cap::butt});
            arrow(d, a + u * 6, b - u * 6, 1.6, 8, t.text);
        }
    }
    const auto style = bold(s.easel, theme::Text::label);
    for (const auto* row : rows)
        d.add(ink::Fill{ink::Path::circle(s.at(row->face, row->path), 7), ink::white});
    for (const auto* row : rows) // the cold test is larger, so that a ring in it hides nothing
        put(d, row->symbol, s.at(row->face, row->path), row->symbol == Symbol::cold ? 7.4 : 5.2,
            t.text);
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const ink::Point at = s.at(rows[i]->face, rows[i]->path);
        // the name stands over or under its middle shot, clear of the cluster and of other names
        ink::Words w;
        double off = 30;
        bool free = false;
        for (const double aside : {0.0, 30.0, -30.0, 56.0, -56.0})
            for (const double way : {30.0, -36.0, 46.0, -52.0, 62.0, -68.0}) {
                if (free) break;
                off = way;
                w = label(s.easel, style, rows[i]->name, {at.x + aside, at.y - off},
                          text::Align::centre);
                w.at.x = std::clamp(w.at.x, s.box.x + 2, s.box.right() - w.width - 2);
                free =
                    s.box.contains(w.box()) && std::ranges::none_of(taken, [&](const ink::Rect& r) {
                        return r.overlaps(w.box().inset(-2));
                    });
            }
        taken.push_back(w.box());
        const double from = off > 0 ? at.y - 6 : at.y + 6,
                     to = off > 0 ? at.y - off + 3 : at.y - off - 9;
        d.add(ink::Stroke{
            ink::Path::segment({at.x, from}, {std::clamp(at.x, w.box().x, w.box().right()), to}),
            0.6,
            t.text,
            {},
            ink::Cap::butt});
        d.add(ink::Fill{ink::Path::round_rect(w.box().inset(-1), 2), ink::white});
        d.add(std::move(w));
    }
}

} // namespace

std::optional<double> curve_step(const Easel& easel, const ScatterInput& input) {
    if (!input.curve_per_degree || std::abs(*input.curve_per_degree) < 1e-6) return std::nullopt;
    const double unit = unit::size_of_unit(unit::Kind::length, easel.words.voice().units);
    const double per_degree = std::abs(*input.curve_per_degree) / unit;
    return pleasant_step(per_degree * fitted_reach(input) * 1.5, 3) * unit;
}

ink::Drawing scatter(const Easel& easel, const ScatterInput& input, double width) {
    const auto& tick = easel.theme.setting(theme::Text::tick);
    const double left = 2.4 * tick.style.size + 8, top = tick.leading + 4;
    const double side = width - left - 8;
    Square s{easel, input, {left, top, side, side}, fitted_reach(input)};
    ink::Drawing d;
    d.size = {width, s.box.bottom() + 2 * tick.leading + 5};
    d.message = input.message;
    ink::Rect wanted{};
    if (input.wanted) {
        const double l = s.x(std::max(input.wanted->first, -s.reach)),
                     r = s.x(std::min(input.wanted->second, s.reach));
        wanted = {l, s.box.y, r - l, s.box.height};
        hatch(d, wanted, 5, 0.35, easel.theme.rule);
    }
    draw_start_lines(d, s);
    draw_curve_lines(d, s);
    auto fields = draw_fields(d, s);
    if (input.wanted)
        if (const auto box = name_wanted(d, s, wanted, fields)) fields.push_back(*box);
    draw_axes(d, s);
    for (const auto& row : input.rows)
        for (const auto& shot : row.shots)
            draw_shot(d, s, row.symbol, shot);
    draw_middles(d, s, fields);
    return d;
}

} // namespace figure
