#include "hand/club.hpp"

#include <numbers>

namespace hand {
namespace {

constexpr double pi = std::numbers::pi;

/// Iron head as the player sees it, millimetres at half size: hosel at the origin, toe up the page,
/// the face to the left.
struct Head {
    Polyline body, leading, top;
};

Head iron() {
    Head h;
    h.leading = {{-2.2, -3},  {-3.2, -7},  {-4.6, -12}, {-5.2, -20},
                 {-5.2, -30}, {-5.0, -38}, {-3.6, -43}};
    h.body = h.leading;
    for (const Dot d : Polyline{{-1, -45.5},
                                {3, -46},
                                {7.5, -43},
                                {9, -37},
                                {7.4, -27},
                                {5.0, -17},
                                {3.2, -9},
                                {2.4, -3}}) {
        h.body.push_back(d);
    }
    h.top = {{-.6, -8}, {-.2, -16}, {.4, -26}, {1.2, -36}, {2.4, -43}};
    return h;
}

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

} // namespace

void add_club(Plate& plate, double scale, double face) {
    const Dot along = unit_vector(plate.handle_direction()), normal{-along.y, along.x};
    const double end = plate.shot().handle_end;
    const Dot from = plate.handle_point(end) + along * (6 * scale);
    const double r = 4.6 * scale, shaft = 13 * scale;
    const Dot to = from + along * shaft;
    const Head head = iron();
    const auto at = [&](const Polyline& p) { return placed(p, to, scale, face); };
    const Polyline body = smoothed(resampled(at(head.body), .5 * scale), true, 3);
    plate.add(Area{{fitted(body, .1, true)}, Tone::club});
    plate.add(Line{fitted(body, .1, true), Pen::inner, false, false});
    plate.add(Line{fitted(smoothed(resampled(at(head.top), .5 * scale), false, 3), .1, false),
                   Pen::detail, true, true});
    const Polyline leading = at(head.leading);
    const Polyline heavy(leading.begin() + 1, leading.end() - 1);
    plate.add(Line{fitted(smoothed(resampled(heavy, .5 * scale), false, 3), .1, false), Pen::handle,
                   true, true});
    // The shaft runs into the head.
    Polyline rod;
    for (int i = -8; i <= 8; ++i) {
        rod.push_back(from + normal * (r * i / 8.0) +
                      along * (1.6 * scale * std::sin(i / 8.0 * pi)));
    }
    const Polyline start = rod;
    const double neck = 2.3 * scale;
    const Dot into = to + along * (6.5 * scale);
    rod.push_back(into + normal * neck);
    rod.push_back(into - normal * neck);
    plate.add(Area{{polygon(rod, true)}, Tone::club});
    plate.add(Line{fitted(start, .1, false), Pen::inner, false, false});
    for (const double g : {-1.0, 1.0}) {
        plate.add(Line{polygon({from + normal * (g * r), into + normal * (g * neck)}, false),
                       Pen::inner, false, false});
    }
    plate.anchor("leading edge", leading[4]);
}

} // namespace hand
