#include "page/drill_sign.hpp"

namespace page {

ink::Drawing space_sign(const figure::Easel& easel, drills::Space space, double side) {
    const double u = side / 24;
    ink::Drawing out;
    out.size = {side, side};
    const auto stroke = [&](const ink::Path& path, double width) {
        out.add(ink::Stroke{path.scaled(u, u), width, easel.theme.text, {}, ink::Cap::round});
    };
    switch (space) {
    case drills::Space::no_swing:
        stroke(ink::Path{}.move({6, 3}).line({6, 22}), 1.4);
        stroke(ink::Path{}.move({6, 13}).line({18, 13}).line({18, 22}), 1.4);
        break;
    case drills::Space::swing:
        out.add(ink::Stroke{ink::Path::circle({12, 12}, 10.5).scaled(u, u),
                            0.8,
                            easel.theme.text,
                            {2.4, 2.0},
                            ink::Cap::butt});
        stroke(ink::Path::circle({12, 12}, 2.4), 1.0);
        stroke(ink::Path{}.move({13.8, 13.8}).line({18.6, 18.6}), 1.6);
        break;
    case drills::Space::range:
        stroke(ink::Path{}.move({8, 22}).line({8, 3}), 1.4);
        out.add(ink::Fill{ink::Path::polyline({{8, 3}, {20, 7}, {8, 11}}, true).scaled(u, u),
                          easel.theme.text});
        stroke(ink::Path{}.move({3, 22}).line({21, 22}), 1.0);
        break;
    }
    return out;
}

} // namespace page
