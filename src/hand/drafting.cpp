#include "hand/drafting.hpp"

namespace hand {

Line straight(Dot a, Dot b, Pen pen) {
    return {{a, {{lerp(a, b, 1 / 3.), lerp(a, b, 2 / 3.), b}}, false}, pen, false, false};
}

void add_arrow_head(Plate& plate, Dot tip, Dot way, double size) {
    const Dot d = unit_vector(way), n{-d.y, d.x};
    Polyline head{tip, tip - d * size + n * (size * .42), tip - d * size - n * (size * .42)};
    Outline o{head[0], {}, true};
    for (int i = 0; i < 3; ++i) {
        const Dot a = head[i], b = head[(i + 1) % 3];
        o.pieces.push_back({lerp(a, b, 1 / 3.), lerp(a, b, 2 / 3.), b});
    }
    plate.add(Area{{o}, Tone::mark});
}

void add_arrow(Plate& plate, Dot from, Dot to, double k) {
    const Dot d = unit_vector(to - from);
    plate.add(straight(from, to - d * (4 * k), Pen::accent));
    add_arrow_head(plate, to, d, 6.5 * k);
}

void add_tick(Plate& plate, Dot knuckle, Dot way, double k, bool half) {
    double out = 0;
    while (out < 30 && plate.surface_on_page(knuckle + way * out) >= 0)
        out += .5;
    const Dot foot = knuckle + way * (out + 2 * k);
    const double dash = half ? 1.5 * k : 6 * k;
    for (double at = 0; at < 6 * k; at += 2.2 * dash)
        plate.add(straight(foot + way * at, foot + way * (at + dash), Pen::accent));
}

} // namespace hand
