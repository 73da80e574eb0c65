#include "hand/club.hpp"

#include "hand/strokes.hpp"

#include <numbers>

namespace hand {
namespace {

constexpr double pi = std::numbers::pi;

/// An iron soled on the ground as the player sees it from above, millimetres: the hosel's axis at
/// the origin, toe up the page, the lofted face turned up towards the left where the ball lies.
struct Head {
    Polyline body;             ///< all that is seen
    Polyline leading;          ///< the straight edge nearest the ball
    Polyline face, top_inside; ///< what is seen of the face; where it meets the thin top line
    std::vector<Polyline> grooves;
};

/// Adds to a picture.
struct Pencil {
    Picture& picture;
    void add(Area area) { picture.marks.emplace_back(std::move(area)); }
    void add(Line line) { picture.marks.emplace_back(std::move(line)); }
    void anchor(const char* name, Dot at) { picture.anchors.push_back({name, at}); }
};

constexpr double leading_x = -9.5; ///< of the leading edge

Head iron() {
    Head h;
    h.leading = {{leading_x, -17}, {leading_x, -67}};
    h.body = {{-6.8, 4},   {-7.2, -4},  {-8.6, -11}, {leading_x, -18}, {leading_x, -40},
              {-9.5, -62}, {-8.8, -70}, {-5, -77},   {2, -81},         {11, -82},
              {18, -79},   {22.5, -73}, {23, -66},   {18.4, -46},      {13.4, -26},
              {9, -11},    {7, -3},     {6.8, 4}};
    h.top_inside = {{3.6, -9}, {9, -26}, {14, -46}, {18.6, -65}, {17.6, -72}, {11, -77.6}};
    h.face = h.top_inside;
    for (const Dot d :
         Polyline{{3, -77.4}, {-2.6, -74}, {-6.4, -68}, {-7.4, -60}, {-7.4, -20}, {-5, -11}})
        h.face.push_back(d);
    for (const double x : {-4.2, -.6, 3.0, 6.6})
        h.grooves.push_back({{x, -32}, {x, -58}});
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

/// From the break to the hosel: shaft, the dark ring of the ferrule, and the hosel that the blade
/// grows out of. It stands still when the face turns.
void add_neck(Pencil& plate, Dot from, Dot to, double scale) {
    constexpr double shaft = 5.2, ferrule = 6.2, hosel = 6.8, high = 12, ring = 6; // millimetres
    const Dot along = unit_vector(to - from), normal{-along.y, along.x};
    const auto at = [&](double aside, double before) {
        return to + normal * (aside * scale) - along * (before * scale);
    };
    Polyline end;
    for (int i = -8; i <= 8; ++i)
        end.push_back(from + normal * (shaft * scale * i / 8.0) +
                      along * (.35 * shaft * scale * std::sin(i / 8.0 * pi)));
    Polyline rod = end;
    rod.push_back(at(shaft, high + ring));
    rod.push_back(at(-shaft, high + ring));
    plate.add(Area{{polygon(rod, true)}, Tone::club});
    plate.add(Line{fitted(end, .1, false), Pen::inner, false, false});
    const Dot tip = along * (4 * scale);
    const Polyline cup{at(hosel, high), at(hosel, -2),           at(4.6, -5) + tip * .5,
                       at(0, -5) + tip, at(-4.6, -5) + tip * .5, at(-hosel, -2),
                       at(-hosel, high)};
    plate.add(Area{{polygon(cup, true)}, Tone::club});
    plate.add(Area{{polygon({at(ferrule, high + ring), at(hosel, high), at(-hosel, high),
                             at(-ferrule, high + ring)},
                            true)},
                   Tone::mark});
    for (const double g : {-1.0, 1.0}) {
        plate.add(Line{polygon({from + normal * (g * shaft * scale), at(g * shaft, high)}, false),
                       Pen::outline, false, false});
        plate.add(Line{polygon({at(g * hosel, high), at(g * hosel, -4)}, false), Pen::outline,
                       false, false});
    }
}

void add_dashes(Pencil& plate, Dot from, Dot to, double on, double off) {
    const double whole = length(to - from);
    const Dot d = unit_vector(to - from);
    for (double s = 0; s < whole; s += on + off)
        plate.add(Line{polygon({from + d * s, from + d * std::min(s + on, whole)}, false),
                       Pen::detail, false, false});
}

/// Where the leading edge would be if it were square, and how far from it it is.
void add_square(Pencil& plate, Dot heel, Dot edge, double scale) {
    const Dot up{0, -1};
    const double reach = 73 * scale;
    if (std::abs(edge.x) > .02) { // a wedge the eye can see
        Polyline wedge{heel};
        const double a = std::atan2(edge.x, -edge.y);
        for (int i = 0; i <= 8; ++i)
            wedge.push_back(heel + Dot{std::sin(a * i / 8), -std::cos(a * i / 8)} * (69 * scale));
        plate.add(Area{{polygon(wedge, true)}, Tone::accent});
    }
    add_dashes(plate, heel, heel + up * reach, 2.6 * scale, 2 * scale);
}

/// Ball, and an arrow from it to the target.
void add_ball(Pencil& plate, Dot centre, double scale) {
    const double r = ball_radius * scale;
    Polyline round;
    for (int i = 0; i < 40; ++i) {
        const double a = in_radians(9.0 * i);
        round.push_back(centre + Dot{std::cos(a), std::sin(a)} * r);
    }
    plate.add(Area{{fitted(round, .03, true)}, Tone::club});
    plate.add(Line{fitted(round, .03, true), Pen::outline, false, false});
    for (const Dot d : Polyline{{0, 0},
                                {.52, 0},
                                {-.52, 0},
                                {.26, .45},
                                {-.26, .45},
                                {.26, -.45},
                                {-.26, -.45}}) { // a few dimples: a ball, not a ring
        Polyline arc;
        for (int i = 0; i <= 8; ++i) {
            const double a = in_radians(20 + 17.5 * i);
            arc.push_back(centre + d * r + Dot{std::cos(a), std::sin(a)} * (.13 * r));
        }
        plate.add(Line{fitted(arc, .03, false), Pen::detail, false, false});
    }
    const Dot from = centre - Dot{r + 3 * scale, 0}, tip = from - Dot{34 * scale, 0};
    plate.add(Line{polygon({from, tip}, false), Pen::outline, false, false});
    plate.add(Line{
        polygon({tip + Dot{8 * scale, -5 * scale}, tip, tip + Dot{8 * scale, 5 * scale}}, false),
        Pen::outline, false, false});
    plate.anchor("target", (from + tip) * .5);
}

} // namespace

void add_club(Picture& picture, const ClubPlace& place, double face) {
    Pencil plate{picture};
    const auto& [from, along, size] = place;
    const double scale = .60 * size;
    const Dot to = from + along * (17 * size);
    const Head head = iron();
    const auto at = [&](const Polyline& p) { return placed(p, to, scale, face); };
    const auto smooth = [&](const Polyline& p, bool closed) {
        return fitted(smoothed(resampled(at(p), .5 * scale), closed, 3), .1, closed);
    };
    const Polyline edge = at(head.leading);
    // The ball lies still while the face turns, clear of leading edge and square line.
    const Dot middle = at({{leading_x, -42}})[0];
    const double beside = std::min({middle.x, edge[0].x, edge[1].x}) - (4 + ball_radius) * scale;
    add_ball(plate, {beside, to.y - 42 * scale}, scale);
    const Outline body = smooth(head.body, true);
    plate.add(Area{{body}, Tone::club});
    plate.add(Area{{smooth(head.face, true)}, Tone::shade});
    add_square(plate, edge[0], unit_vector(edge[1] - edge[0]), scale);
    plate.add(Line{body, Pen::outline, false, false});
    for (const Polyline& groove : head.grooves)
        plate.add(Line{polygon(at(groove), false), Pen::detail, false, false});
    plate.add(Line{smooth(head.top_inside, false), Pen::detail, false, true});
    plate.add(Line{polygon(edge, false), Pen::handle, false, false});
    add_neck(plate, from, to, scale);
    plate.anchor("leading edge", middle);
}

} // namespace hand
