#include "figure/impact_above.hpp"

#include "figure/callout.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <cmath>

namespace figure {

namespace {

/// Places of one panel. `outward` is +1 when the player stands on the left (a right-hander), else
/// -1.
struct Panel {
    ink::Rect box, scene, column;
    ink::Point ball;
    double outward = 1, scale = 1, radius = 7;
    int stretch = 1; ///< how many times as wide angles are drawn as they are

    ink::Point along(double degrees) const {
        const double a = stretch * degrees / unit::degrees_in_a_radian;
        return {std::sin(a), -std::cos(a)};
    }
};

/// Up to three times, as long as no line leaves the scene.
int stretch_of(const ImpactInput& input) {
    double most = 1;
    for (const Impact& state : input.states)
        for (const auto& angle : {state.face, state.path, state.start})
            if (angle) most = std::max(most, std::abs(*angle));
    return std::clamp(static_cast<int>(36 / most), 1, 3);
}

/// As much of that length as stays inside the scene.
ink::Point reach(const Panel& p, ink::Point direction, double length) {
    const ink::Rect room = p.scene.inset(5);
    const auto limit = [&](double from, double step, double least, double most) {
        if (std::abs(step) < 1e-9) return;
        length = std::min(length, ((step > 0 ? most : least) - from) / step);
    };
    limit(p.ball.x, direction.x, room.x, room.right());
    limit(p.ball.y, direction.y, room.y, room.bottom());
    return p.ball + direction * std::max(0.0, length);
}

/// A shoe seen from above, its toe pointing to `facing` (+1 right), turned by `turn` degrees.
ink::Path shoe(ink::Point at, double facing, double turn, double k) {
    const double a = turn / unit::degrees_in_a_radian;
    const auto place = [&](double x, double y) {
        const double u = (x * std::cos(a) - y * std::sin(a)) * k * facing;
        const double v = (x * std::sin(a) + y * std::cos(a)) * k;
        return at + ink::Point{u, v};
    };
    ink::Path outline;
    outline.move(place(-14, 0))
        .curve(place(-14, -5), place(-8, -5.4), place(-3, -4))
        .curve(place(2, -4), place(5, -7), place(10, -5.6))
        .curve(place(15, -4), place(16, 2), place(11, 4.6))
        .curve(place(6, 6), place(0, 4), place(-4, 4.2))
        .curve(place(-8, 5.4), place(-14, 5), place(-14, 0));
    return outline.close();
}

void draw_feet(ink::Drawing& d, const Easel& easel, const Panel& p) {
    const double k = p.scale;
    const double x = p.outward > 0 ? p.scene.x + 15 * k : p.scene.right() - 15 * k;
    const ink::Point lead{x, p.ball.y - 22 * k}, trail{x, p.ball.y + 24 * k};
    for (const auto& [at, turn] : {std::pair{lead, -16.0}, std::pair{trail, 4.0}})
        d.add(ink::Stroke{shoe(at, p.outward, turn, k), 0.9, easel.theme.text});
    const auto style = easel.theme.setting(theme::Text::tick).style;
    d.add(label(easel, style, easel.words.say("ballfigure.impact.you"),
                {x, p.ball.y + 1 * k + middle(style)}, text::Align::centre));
}

/// An iron from above, its leading edge at right angles to where the face looks, behind the ball.
void draw_head(ink::Drawing& d, const Easel& easel, const Panel& p, double face) {
    const double k = p.scale;
    const ink::Point n = p.along(face), toe = ink::Point{-n.y, n.x} * p.outward;
    const ink::Point middle_of_edge = p.ball - n * (p.radius + 1.4);
    const auto at = [&](double u, double back) {
        return middle_of_edge + toe * (u * k) - n * (back * k);
    };
    const ink::Point hosel = at(-18, 1.5), hands{-p.outward * 27 * k, -3 * k};
    const ink::Point grip = hosel + hands;
    d.add(ink::Stroke{ink::Path::segment(hosel, grip), 3.6, easel.theme.text, {}, ink::Cap::butt});
    d.add(ink::Stroke{ink::Path::segment(hosel, grip), 1.9, ink::white, {}, ink::Cap::butt});
    ink::Path sole;
    sole.move(at(-17, 0))
        .line(at(14, 0))
        .curve(at(18, 0.5), at(18.5, 7), at(14, 9))
        .curve(at(8, 10.5), at(-8, 7.5), at(-17, 5))
        .close();
    d.add(ink::Fill{sole, ink::white});
    d.add(ink::Stroke{sole, 0.9, easel.theme.text});
    d.add(ink::Stroke{
        ink::Path::segment(at(-17, 0), at(15, 0)), 2.2, easel.theme.text, {}, ink::Cap::round});
    d.add(ink::Fill{ink::Path::circle(hosel, 3.0 * k), easel.theme.text});
}

void draw_target_line(ink::Drawing& d, const Easel& easel, const Panel& p) {
    const auto& t = easel.theme;
    const ink::Point top{p.ball.x, p.scene.y + 2};
    d.add(ink::Stroke{ink::Path::segment({p.ball.x, p.scene.bottom()}, top),
                      t.widths.rule,
                      t.rule,
                      {},
                      ink::Cap::butt});
    d.add(ink::Stroke{ink::Path::segment({top.x - 6, top.y}, {top.x + 6, top.y}),
                      1.2,
                      t.text,
                      {},
                      ink::Cap::butt});
    d.add(label(easel, theme::Text::tick, easel.words.say("ballfigure.impact.target"),
                {top.x, p.scene.y - 2.5}, text::Align::centre));
}

ink::Drawing named(const Easel& easel, const Panel& p, unit::Measure measure, double value,
                   bool estimated) {
    const std::string stem = "ballfigure.impact." + std::string(unit::row(measure).key);
    const auto align = p.outward > 0 ? text::Align::left : text::Align::right;
    auto plain = easel.theme.setting(theme::Text::caption);
    plain.leading = plain.style.size * 1.22;
    auto head = plain;
    head.style.weight = 700;
    std::string words =
        easel.words.say(stem + '.' + std::string(way(easel, measure, value)),
                        {{"x", words::quantity(measure, std::abs(value), easel.words)}});
    // A bracket that does not fit goes to its own line whole, never broken at a hyphen.
    if (const auto bracket = words.find(" ("); bracket != std::string::npos)
        if (easel.type.line(words, plain.style).width > p.column.width) words[bracket] = '\n';
    if (estimated) words += '\n' + easel.words.say("ballfigure.estimated");
    return stacked({paragraph(easel, head, easel.words.say(stem), p.column.width, align),
                    paragraph(easel, plain, words, p.column.width, align)});
}

std::vector<Callout> callouts(const Easel& easel, const Panel& p, const Impact& state) {
    std::vector<Callout> out;
    const double k = p.scale;
    if (state.start)
        out.push_back({reach(p, p.along(*state.start), 128 * k),
                       named(easel, p, unit::Measure::start, *state.start, state.start_estimated),
                       6});
    if (state.face)
        out.push_back({reach(p, p.along(*state.face), 98 * k),
                       named(easel, p, unit::Measure::face, *state.face, state.face_estimated), 2});
    if (state.path)
        out.push_back({reach(p, p.along(*state.path) * -1, 52 * k),
                       named(easel, p, unit::Measure::path, *state.path, state.path_estimated), 2});
    return out;
}

void draw_lines(ink::Drawing& d, const Easel& easel, const Panel& p, const Impact& state) {
    const auto& t = easel.theme;
    const double k = p.scale;
    if (state.path) {
        const ink::Point u = p.along(*state.path);
        arrow(d, reach(p, u * -1, 58 * k), reach(p, u, 68 * k), 2.0, 8, t.text);
    }
    if (state.face) {
        draw_head(d, easel, p, *state.face);
        const ink::Point u = p.along(*state.face);
        arrow(d, p.ball + u * p.radius, reach(p, u, 102 * k), t.widths.data, 6, t.text);
    }
    if (state.start) {
        const ink::Point u = p.along(*state.start), gone = reach(p, u, 128 * k);
        d.add(ink::Stroke{ink::Path::segment(p.ball + u * p.radius, gone),
                          t.widths.strong,
                          t.text,
                          {4.5, 3},
                          ink::Cap::butt});
        d.add(ink::Fill{ink::Path::circle(gone, 4.2), ink::white});
        d.add(ink::Stroke{ink::Path::circle(gone, 4.2), 1.0, t.text});
    }
    d.add(ink::Fill{ink::Path::circle(p.ball, p.radius), ink::white});
    d.add(ink::Stroke{ink::Path::circle(p.ball, p.radius), 1.0, t.text});
}

/// A panel whose top left corner is `at`; gives its height.
double draw_panel(ink::Drawing& d, const Easel& easel, const Impact& state, ink::Point at,
                  double width, int stretch, double most) {
    const auto& t = easel.theme;
    const auto head = bold(easel, theme::Text::label);
    const double top =
        t.setting(theme::Text::label).leading + t.setting(theme::Text::tick).leading + 4;
    Panel p;
    p.stretch = stretch;
    p.outward = easel.words.voice().hand == unit::Hand::right ? 1 : -1;
    const double aside = width * 0.43, gap = 8, room = width - aside - gap;
    p.scale = std::clamp(room / 121, 0.7, most);
    p.radius = 6.6 * p.scale;
    const double up = 136 * p.scale, down = 64 * p.scale;
    p.scene = {p.outward > 0 ? at.x : at.x + aside + gap, at.y + top, room, up + down};
    p.column = {p.outward > 0 ? at.x + room + gap : at.x, at.y + top - 2, aside, up + down + 2};
    const double stance = 0.62 * room;
    p.ball = {p.outward > 0 ? p.scene.x + stance : p.scene.right() - stance, p.scene.y + up};
    const auto notes = callouts(easel, p, state);
    p.column.height = std::max(p.column.height, height_of(notes));

    put(d, state.symbol, {at.x + 5, at.y + head.size * 0.62}, 4, t.text);
    d.add(label(easel, head, state.name, {at.x + 13, at.y + head.size * 0.95}));
    draw_target_line(d, easel, p);
    draw_feet(d, easel, p);
    draw_lines(d, easel, p, state);
    put_callouts(d, notes, p.column, t.setting(theme::Text::caption).style.size * 1.22, t.text);
    return std::max(p.scene.bottom(), p.column.bottom()) - at.y;
}

} // namespace

ink::Drawing impact_above(const Easel& easel, const ImpactInput& input, double width) {
    ink::Drawing d;
    d.size = {width, 0};
    d.message = input.message;
    if (input.states.empty()) return d;
    const double least = easel.theme.setting(theme::Text::caption).style.size * 16.4;
    const double gap = 6 * mm;
    const auto count = static_cast<double>(std::max<std::size_t>(1, input.states.size()));
    const bool beside = (width - gap * (count - 1)) / count >= least;
    const double each =
        beside ? std::min((width - gap * (count - 1)) / count, 95 * mm) : std::min(width, 95 * mm);
    const int stretch = stretch_of(input);
    ink::Point at;
    for (const Impact& state : input.states) {
        const double height = draw_panel(d, easel, state, at, each, stretch, beside ? 1.5 : 0.9);
        d.size.height = std::max(d.size.height, at.y + height);
        if (beside)
            at.x += each + gap;
        else
            at.y += height + gap;
    }
    if (stretch == 1) return d;
    const auto note =
        paragraph(easel, theme::Text::tick,
                  easel.words.say("ballfigure.impact.stretched", {{"n", stretch}}), width);
    d.add(note, {0, d.size.height + 3});
    d.size.height += 3 + note.size.height;
    return d;
}

} // namespace figure
