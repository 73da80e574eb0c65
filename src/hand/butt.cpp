#include "hand/butt.hpp"

#include "hand/drafting.hpp"

namespace hand {
namespace {

/// Points round the handle's end, `beyond` its flank, from one angle to another.
template <class F>
Polyline round_the_end(Plate& plate, const Limbs& l, double from, double to, F&& beyond) {
    Polyline line;
    for (int i = 0; i <= 24; ++i) {
        const Vec out = unit_vector(flank(l, 0, mix(from, to, i / 24.0)) - l.handle.butt);
        line.push_back(
            plate.page(l, l.handle.butt + out * (l.handle.radius + beyond(2 * i / 24.0 - 1))));
    }
    return line;
}

} // namespace

void add_butt_cap(Plate& plate, const Limbs& l) {
    const auto ring = [&](double share) {
        Polyline p;
        for (int i = 0; i < 40; ++i) {
            const Vec out = flank(l, 0, 9.0 * i) - l.handle.butt;
            p.push_back(plate.page(l, l.handle.butt + out * share));
        }
        return fitted(p, .03, true);
    };
    plate.add(Area{{ring(1)}, Tone::handle});
    plate.add(Line{ring(1), Pen::handle, false, false});
    plate.add(Area{{ring(.80)}, Tone::handle_light});
    plate.add(Line{ring(.80), Pen::detail, false, false});
    plate.add(Area{{ring(.13)}, Tone::mark});
}

void hatch_pad(Plate& plate, const Limbs& l, double angle, double near, double far) {
    constexpr double half = 62, step = .5, pitch = 4.4;
    const Dot c = plate.page(l, l.handle.butt);
    const Dot middle = plate.page(l, flank(l, 0, angle)) - c;
    const double r = l.handle.radius, pad = std::atan2(middle.y, middle.x);
    const auto inside = [&](Dot p) {
        const Dot w = p - c;
        const double d = length(w) - r;
        const double off =
            in_degrees(std::remainder(std::atan2(w.y, w.x) - pad, 2 * std::numbers::pi));
        const double taper = std::cos(in_radians(90 * std::min(1.0, std::abs(off) / half)));
        return d > near * taper + .9 && d < mix(near, far, std::sqrt(taper)) &&
               std::abs(off) < half && plate.surface_on_page(p) == palm_side;
    };
    const double reach = r + far + 2;
    for (double v = -2 * reach; v < 2 * reach; v += pitch) {
        std::optional<Dot> from;
        Dot last{};
        for (double u = -reach; u <= reach + step; u += step) {
            const Dot p = c + Dot{u, v - u};
            const bool in = u <= reach && inside(p);
            if (in && !from) from = p;
            if (!in && from) {
                if (length(last - *from) > 1.5) plate.add(straight(*from, last, Pen::inner));
                from.reset();
            }
            last = p;
        }
    }
}

void add_gap(Plate& plate, const Limbs& l, const ButtContact& contact, double k) {
    constexpr double half = 62; // degrees to either side
    const auto room = [&](double s) { return contact.gap * std::cos(std::numbers::pi / 2 * s); };
    const double from = contact.angle - half, to = contact.angle + half;
    Polyline ring = round_the_end(plate, l, from, to, [](double) { return 0.0; });
    const Polyline outer = round_the_end(plate, l, from, to, room);
    const Polyline inner = ring;
    ring.insert(ring.end(), outer.rbegin(), outer.rend());
    plate.add(Area{{fitted(ring, .05, true)}, Tone::skin});
    plate.add(Line{fitted(outer, .05, false), Pen::outline, false, false});
    plate.add(Line{fitted(inner, .05, false), Pen::outline, false, false});
    const Dot a = plate.page(l, flank(l, 0, contact.angle)), way = a - plate.page(l, l.handle.butt);
    const Dot d = unit_vector(way), b = a + d * contact.gap;
    const double size = std::min(3.2 * k, contact.gap * .45);
    plate.add(straight(a, b, Pen::inner));
    add_arrow_head(plate, a, Dot{-d.x, -d.y}, size);
    add_arrow_head(plate, b, d, size);
}

void add_contact(Plate& plate, const Limbs& l, const ButtContact& contact) {
    const Polyline arc =
        round_the_end(plate, l, contact.angle - 40, contact.angle + 40, [](double) { return .6; });
    for (const double more : {0.0, .5, 1.0}) {
        Polyline wide = arc;
        const Dot c = plate.page(l, l.handle.butt);
        for (Dot& p : wide)
            p = p + unit_vector(p - c) * more;
        plate.add(Line{fitted(wide, .05, false), Pen::accent, false, false});
    }
}

} // namespace hand
