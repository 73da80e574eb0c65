#include "hand/club.hpp"

#include <numbers>

namespace hand {
namespace {

constexpr double pi = std::numbers::pi;

/// An iron soled on the ground as the player sees it from above, millimetres: hosel at the origin,
/// toe up the page, the lofted face turned up towards the left where the ball lies.
struct Head {
    Polyline body;    ///< all that is seen
    Polyline leading; ///< the edge nearest the ball
    Polyline topline; ///< where face and top edge meet
    std::vector<Polyline> grooves;
};

Head iron() {
    Head h;
    h.leading = {{-5, -3},   {-11, -8},    {-14, -16}, {-15, -26},
                 {-15, -42}, {-14.6, -58}, {-13, -68}, {-9, -75}};
    h.body = h.leading;
    for (const Dot d : Polyline{{-2, -80},
                                {7, -82},
                                {15, -79},
                                {19, -71},
                                {18, -58},
                                {14, -42},
                                {9.5, -26},
                                {6.5, -13},
                                {5, -3}}) {
        h.body.push_back(d);
    }
    h.topline = {{2.2, -6}, {4.6, -18}, {9.2, -38}, {13, -56}, {13.6, -68}, {10, -76}, {2, -79.5}};
    for (const double x : {-10.5, -6.0, -1.5, 3.0})
        h.grooves.push_back({{x, -22 - std::max(x, -3.0) - 3}, {x, -64}});
    return h;
}

constexpr double ball_radius = 21.3; ///< Equipment Rules: diameter not less than 42.67 mm

Polyline placed(const Polyline& shape, Dot at, double scale, double turn) {
    const double a = turn * pi / 180, c = std::cos(a), s = std::sin(a);
    Polyline out;
    for (const Dot d : shape)
        out.push_back(at + Dot{d.x * c - d.y * s, d.x * s + d.y * c} * scale);
    return out;
}

Outline polygon(const Polyline& line, bool closed) {
    Outline o{line.front(), {}, closed};
    for (std::size_t i = 1; i <= line.size(); ++i) {
        if (i == line.size() && !closed) break;
        const Dot a = line[i - 1], b = line[i % line.size()];
        o.pieces.push_back({a + (b - a) * (1 / 3.), a + (b - a) * (2 / 3.), b});
    }
    return o;
}

/// The shaft's end below the break, running into the head.
void add_shaft(Plate& plate, Dot from, Dot to, double r, double neck) {
    const Dot along = unit_vector(to - from), normal{-along.y, along.x};
    Polyline rod;
    for (int i = -8; i <= 8; ++i)
        rod.push_back(from + normal * (r * i / 8.0) + along * (.35 * r * std::sin(i / 8.0 * pi)));
    const Polyline start = rod;
    rod.push_back(to + normal * neck);
    rod.push_back(to - normal * neck);
    plate.add(Area{{polygon(rod, true)}, Tone::club});
    plate.add(Line{fitted(start, .1, false), Pen::inner, false, false});
    for (const double g : {-1.0, 1.0}) {
        plate.add(Line{polygon({from + normal * (g * r), to + normal * (g * neck)}, false),
                       Pen::outline, false, false});
    }
}

void add_dashes(Plate& plate, Dot from, Dot to, double on, double off) {
    const double whole = length(to - from);
    const Dot d = unit_vector(to - from);
    for (double s = 0; s < whole; s += on + off)
        plate.add(Line{polygon({from + d * s, from + d * std::min(s + on, whole)}, false),
                       Pen::detail, false, false});
}

/// Where the leading edge would be if it were square, and how far from it it is.
void add_square(Plate& plate, Dot heel, Dot edge, double scale) {
    const Dot up{0, -1};
    const double reach = 80 * scale;
    if (std::abs(edge.x) > .02) { // a wedge the eye can see
        Polyline wedge{heel};
        const double a = std::atan2(edge.x, -edge.y);
        for (int i = 0; i <= 8; ++i)
            wedge.push_back(heel + Dot{std::sin(a * i / 8), -std::cos(a * i / 8)} * (76 * scale));
        plate.add(Area{{polygon(wedge, true)}, Tone::accent});
    }
    add_dashes(plate, heel, heel + up * reach, 2.6 * scale, 2 * scale);
}

/// Ball, and an arrow from it to the target.
void add_ball(Plate& plate, Dot centre, double scale) {
    const double r = ball_radius * scale;
    Polyline round;
    for (int i = 0; i < 40; ++i) {
        const double a = in_radians(9.0 * i);
        round.push_back(centre + Dot{std::cos(a), std::sin(a)} * r);
    }
    plate.add(Area{{fitted(round, .03, true)}, Tone::club});
    plate.add(Line{fitted(round, .03, true), Pen::outline, false, false});
    const Dot from = centre - Dot{r + 3 * scale, 0}, tip = from - Dot{34 * scale, 0};
    plate.add(Line{polygon({from, tip}, false), Pen::outline, false, false});
    plate.add(Line{
        polygon({tip + Dot{8 * scale, -5 * scale}, tip, tip + Dot{8 * scale, 5 * scale}}, false),
        Pen::outline, false, false});
    plate.anchor("target", (from + tip) * .5);
}

} // namespace

void add_club(Plate& plate, double size, double face) {
    const double scale = .60 * size;
    const Dot along = unit_vector(plate.handle_direction());
    const Dot from = plate.handle_point(plate.shot().handle_end) + along * (6 * size);
    const Dot to = from + along * (14 * size);
    const Head head = iron();
    const auto at = [&](const Polyline& p) { return placed(p, to, scale, face); };
    const auto line = [&](const Polyline& p, Pen pen, bool taper) {
        plate.add(Line{fitted(smoothed(resampled(at(p), .5 * scale), false, 3), .1, false), pen,
                       taper, taper});
    };
    const Polyline edge = at({{-15, -10}, {-15, -60}});
    add_ball(plate, at({{-15 - 4 - ball_radius, -40}})[0], scale);
    const Polyline body = smoothed(resampled(at(head.body), .5 * scale), true, 3);
    plate.add(Area{{fitted(body, .1, true)}, Tone::club});
    add_square(plate, edge[0], unit_vector(edge[1] - edge[0]), scale);
    plate.add(Line{fitted(body, .1, true), Pen::outline, false, false});
    for (const Polyline& groove : head.grooves)
        plate.add(Line{polygon(at(groove), false), Pen::hatch, false, false});
    line(head.topline, Pen::detail, false);
    line(head.leading, Pen::handle, true);
    add_shaft(plate, from, to + along * (3 * size), 4.6 * size, 3.4 * size);
    plate.anchor("leading edge", at({{-15, -42}})[0]);
}

} // namespace hand
