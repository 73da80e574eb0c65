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

/// Slanted lines where `inside` holds, up to `reach` from `c`.
template <class F>
void hatch(Plate& plate, Dot c, double reach, F&& inside) {
    constexpr double step = .5, pitch = 4.4, shortest = 1.5;
    for (double v = -2 * reach; v < 2 * reach; v += pitch) {
        std::optional<Dot> from;
        Dot last{};
        for (double u = -reach; u <= reach + step; u += step) {
            const Dot p = c + Dot{u, v - u};
            const bool in = u <= reach && inside(p);
            if (in && !from) from = p;
            if (!in && from) {
                if (length(last - *from) > shortest) plate.add(straight(*from, last, Pen::inner));
                from.reset();
            }
            last = p;
        }
    }
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

bool has_gap(const ButtContact& contact) { return contact.gap > 1.5; }

void hatch_pad(Plate& plate, const Limbs& l, const ButtContact& contact, double k) {
    constexpr double half = 62;
    const double near = has_gap(contact) ? contact.gap : 0, far = near + 15 * k;
    const double lane = has_gap(contact) ? 0 : 4 * k; // of the arrow
    const Dot c = plate.page(l, l.handle.butt);
    const Dot middle = plate.page(l, flank(l, 0, contact.angle)) - c;
    const double r = l.handle.radius, pad = std::atan2(middle.y, middle.x);
    const Dot across = unit_vector(Dot{-middle.y, middle.x});
    const auto inside = [&](Dot p) {
        const Dot w = p - c;
        const double d = length(w) - r;
        const double off =
            in_degrees(std::remainder(std::atan2(w.y, w.x) - pad, 2 * std::numbers::pi));
        const double taper = std::cos(in_radians(90 * std::min(1.0, std::abs(off) / half)));
        return d > near * taper + .9 && d < mix(near, far, std::sqrt(taper)) &&
               std::abs(off) < half && std::abs(dot(w, across)) >= lane &&
               plate.surface_on_page(p) == palm_side;
    };
    hatch(plate, c, r + far + 2, inside);
}

void hatch_pad_beside(Plate& plate, const Limbs& l, double k) {
    const Dot along = unit_vector(plate.handle_direction());
    const Dot middle = plate.handle_point(25 * k), up{along.y, -along.x};
    hatch(plate, middle, 40 * k, [&](Dot p) {
        const Dot w = p - middle;
        const double u = std::abs(dot(w, along)) / (21 * k), v = dot(w, up) - l.handle.radius;
        return u < 1 && v > 1.5 * k && v < 15 * k * std::sqrt(1 - u * u) &&
               plate.surface_on_page(p) == palm_side;
    });
}

void add_gap(Plate& plate, const Limbs& l, const ButtContact& contact) {
    constexpr double half = 62; // degrees to either side
    const auto room = [&](double s) {
        const double c = std::cos(std::numbers::pi / 2 * s);
        return contact.gap * c * c;
    };
    const double from = contact.angle - half, to = contact.angle + half;
    Polyline ring = round_the_end(plate, l, from, to, [](double) { return 0.0; });
    const Polyline outer = round_the_end(plate, l, from, to, room);
    ring.insert(ring.end(), outer.rbegin(), outer.rend());
    plate.add(Area{{fitted(ring, .05, true)}, Tone::mark});
}

void add_contact(Plate& plate, const Limbs& l, const ButtContact& contact, double k) {
    const Dot at = plate.page(l, flank(l, 0, contact.angle));
    const Dot out = unit_vector(at - plate.page(l, l.handle.butt));
    add_arrow(plate, at + out * (20 * k), at + out * (.6 * k), k);
}

} // namespace hand
