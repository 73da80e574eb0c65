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
    case drills::Space::never_swing:
        // a club, struck out as ISO 7010 strikes out
        stroke(ink::Path{}.move({15.6, 5.4}).line({9.8, 17}), 1.2);
        stroke(ink::Path{}.move({9.8, 17}).line({6.2, 16.4}), 2.4);
        stroke(ink::Path::circle({12, 12}, 10.6), 1.4);
        stroke(ink::Path{}.move({4.5, 4.5}).line({19.5, 19.5}), 1.4);
        break;
    case drills::Space::swing:
        out.add(ink::Stroke{ink::Path::circle({12, 12}, 10.5).scaled(u, u),
                            0.8,
                            easel.theme.text,
                            {2.4, 2.0},
                            ink::Cap::butt});
        out.add(ink::Fill{ink::Path::circle({12, 12}, 2.8).scaled(u, u), easel.theme.text});
        stroke(ink::Path{}.move({12, 12}).line({18.2, 6.4}).line({20.4, 8.2}), 1.4);
        break;
    case drills::Space::range:
    case drills::Space::range_only:
        stroke(ink::Path{}.move({8, 22}).line({8, 3}), 1.4);
        out.add(ink::Fill{ink::Path::polyline({{8, 3}, {20, 7}, {8, 11}}, true).scaled(u, u),
                          easel.theme.text});
        stroke(ink::Path{}.move({3, 22}).line({21, 22}), 1.0);
        break;
    }
    return out;
}

} // namespace page
