#include "figure/scatter.hpp"

#include "figure/scale.hpp"
#include "figure/scatter_fields.hpp"
#include "words/number.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

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

/// Between two lines along which the ball starts alike, degrees.
double start_step(const Square& s) { return s.reach > 10 ? 10 : 5; }

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
    const double share = s.input.face_share, step = start_step(s);
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

/// Names the wanted range at its foot or head, where the word is free of the others.
void name_wanted(ink::Drawing& d, const Square& s, const FieldPlan& plan,
                 const std::vector<ink::Rect>& taken) {
    const ink::Rect& band = plan.wanted;
    const auto meets = [](const std::vector<ink::Rect>& marks, const ink::Rect& box) {
        return std::ranges::any_of(marks, [&](const ink::Rect& m) { return m.overlaps(box); });
    };
    const auto& tick = s.easel.theme.setting(theme::Text::tick);
    ink::Style style = tick.style;
    style.colour = s.easel.theme.text;
    constexpr int places = 24; // at the foot, at the head, then from the foot upwards
    for (int i = -1; i < places; ++i) {
        const double y = i < 0 ? s.box.y + tick.leading
                               : s.box.bottom() - 4 - i * (s.box.height - tick.leading) / places;
        ink::Words w = label(s.easel, style, s.easel.words.say("figure.wanted"),
                             {band.x + band.width / 2, y}, text::Align::centre);
        const ink::Rect box = w.box().inset(-1);
        if (w.width > band.width || meets(plan.shots, w.box()) || meets(taken, box)) continue;
        d.add(ink::Fill{ink::Path::rect(box), ink::white});
        d.add(std::move(w));
        return;
    }
}

/// The square as the words in its fields see it.
FieldPlan field_plan(const Square& s, const ink::Rect& wanted) {
    FieldPlan plan{s.box, s.reach, s.input.face_share, start_step(s)};
    if (const auto metres = curve_step(s.easel, s.input))
        plan.curve_step = *metres / std::abs(*s.input.curve_per_degree);
    plan.wanted = wanted;
    for (const auto& row : s.input.rows) {
        for (const auto& shot : row.shots) {
            const ink::Point at = s.at(shot.face, shot.path);
            plan.shots.push_back({at.x - 4, at.y - 4, 8, 8});
        }
        const ink::Point middle = s.at(row.face, row.path);
        if (!row.shots.empty()) plan.middles.push_back({middle.x - 12, middle.y - 12, 24, 24});
    }
    return plan;
}

void draw_axes(ink::Drawing& d, const Square& s) {
    const auto& t = s.easel.theme;
    const auto& tick = t.setting(theme::Text::tick);
    d.add(ink::Stroke{ink::Path::rect(s.box), t.widths.axis, t.text, {}, ink::Cap::butt});
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

/// The name of a middle shot and the line that leads to it.
struct Name {
    ink::Words words;
    ink::Point from, to;

    bool leads_over(const ink::Rect& r) const {
        for (int k = 0; k <= 8; ++k)
            if (const auto p = from + (to - from) * (k / 8.0);
                r.overlaps({p.x - 0.5, p.y - 0.5, 1, 1}))
                return true;
        return false;
    }
    std::vector<ink::Rect> boxes() const {
        std::vector<ink::Rect> out{words.box().inset(-2)};
        for (int k = 0; k <= 4; ++k) {
            const auto p = from + (to - from) * (k / 4.0);
            out.push_back({p.x - 2, p.y - 2, 4, 4});
        }
        return out;
    }
};

/// `row`'s name `off` points over its middle shot (under it when negative) and so far aside.
Name name_at(const Square& s, const ScatterRow& row, double aside, double off) {
    const ink::Point at = s.at(row.face, row.path);
    Name name{label(s.easel, bold(s.easel, theme::Text::label), row.name,
                    {at.x + aside, at.y - off}, text::Align::centre),
              {},
              {}};
    name.words.at.x =
        std::clamp(name.words.at.x, s.box.x + 2, s.box.right() - name.words.width - 2);
    const ink::Rect box = name.words.box();
    name.from = {at.x, off > 0 ? at.y - 6 : at.y + 6};
    name.to = {std::clamp(at.x, box.x, box.right()), off > 0 ? at.y - off + 3 : at.y - off - 9};
    return name;
}

/// What speaks against a name: other names and their lines, then middle shots, then shots.
double against(const Square& s, const ScatterRow& row, const Name& name,
               const std::vector<Name>& others) {
    const ink::Rect box = name.words.box().inset(-2);
    if (!s.box.contains(name.words.box())) return 1e6;
    double sum = 0;
    for (const Name& other : others)
        if (other.words.box().overlaps(box) || other.leads_over(box) ||
            name.leads_over(other.words.box()))
            sum += 100;
    for (const auto& each : s.input.rows) {
        const ink::Point middle = s.at(each.face, each.path);
        const ink::Rect disc{middle.x - 8, middle.y - 8, 16, 16};
        if (!each.shots.empty() && disc.overlaps(box)) sum += 100;
        if (&each != &row && !each.shots.empty() && name.leads_over(disc)) sum += 30;
        for (const auto& shot : each.shots) {
            const ink::Point at = s.at(shot.face, shot.path);
            sum += 8 * box.overlaps({at.x - 3, at.y - 3, 6, 6});
        }
    }
    return sum + 0.1 * std::hypot(name.to.x - name.from.x, name.to.y - name.from.y);
}

/// Each middle shot's name where it is clear of the others, as near as can be.
std::vector<Name> names_of(const Square& s) {
    std::vector<Name> out;
    for (const auto& row : s.input.rows) {
        if (row.shots.empty()) continue;
        std::optional<Name> best;
        double least = 0;
        for (const double aside : {0.0, 24.0, -24.0, 44.0, -44.0})
            for (const double way : {18.0, -24.0, 30.0, -36.0, 46.0, -52.0, 62.0, -68.0}) {
                Name name = name_at(s, row, aside, way);
                const double cost = against(s, row, name, out);
                if (!best || cost < least) best = std::move(name), least = cost;
            }
        out.push_back(std::move(*best));
    }
    return out;
}

/// Middle shots, larger, named, with an arrow from the first to the next.
void draw_middles(ink::Drawing& d, const Square& s, const std::vector<Name>& names) {
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
    for (const auto* row : rows)
        d.add(ink::Fill{ink::Path::circle(s.at(row->face, row->path), 7), ink::white});
    for (const auto* row : rows) // the cold test is larger, so that a ring in it hides nothing
        put(d, row->symbol, s.at(row->face, row->path), row->symbol == Symbol::cold ? 7.4 : 5.2,
            t.text);
    for (const Name& name : names) {
        d.add(ink::Stroke{ink::Path::segment(name.from, name.to), 0.6, t.text, {}, ink::Cap::butt});
        d.add(ink::Fill{ink::Path::round_rect(name.words.box().inset(-1), 2), ink::white});
        d.add(name.words);
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
    add_line(d, {s.at(0, -s.reach), s.at(0, s.reach)}, 0.35, easel.theme.rule);
    add_line(d, {s.at(-s.reach, 0), s.at(s.reach, 0)}, 0.35, easel.theme.rule);
    draw_start_lines(d, s);
    draw_curve_lines(d, s);
    const auto names = names_of(s);
    FieldPlan plan = field_plan(s, wanted);
    for (const Name& name : names)
        std::ranges::copy(name.boxes(), std::back_inserter(plan.middles));
    auto fields = draw_fields(d, easel, plan);
    fields.insert(fields.end(), plan.middles.begin(), plan.middles.end());
    if (input.wanted) name_wanted(d, s, plan, fields);
    draw_axes(d, s);
    for (const auto& row : input.rows)
        for (const auto& shot : row.shots)
            draw_shot(d, s, row.symbol, shot);
    draw_middles(d, s, names);
    return d;
}

} // namespace figure
