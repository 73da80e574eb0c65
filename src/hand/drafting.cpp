#include "hand/drafting.hpp"

namespace hand {

Line straight(Dot a, Dot b, Pen pen) { return {polygon({a, b}, false), pen, false, false}; }

void add_arrow_head(Plate& plate, Dot tip, Dot way, double size) {
    const Dot d = unit_vector(way), n{-d.y, d.x};
    const Polyline corners{tip, tip - d * size + n * (size * .42),
                           tip - d * size - n * (size * .42)};
    plate.add(Area{{polygon(corners, true)}, Tone::mark});
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
    const Dot foot = knuckle + way * (out + 2 * k), beside{-way.y * k, way.x * k};
    const double whole = 8 * k, dash = half ? 2.4 * k : whole;
    for (double at = 0; at < whole; at += dash * 1.8) {
        const Dot a = foot + way * at, b = a + way * dash, thick = beside * .9;
        plate.add(Area{{polygon({a + thick, b + thick, b - thick, a - thick}, true)}, Tone::mark});
    }
}

} // namespace hand
