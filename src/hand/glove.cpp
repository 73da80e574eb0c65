// Cuff, seams and closure of a glove: dotted seams, a tab on the back of the wrist.
#include "hand/skin.hpp"

namespace hand {
namespace {

using Path = std::vector<Vec>;

/// Round the wrist square to the carpus, `at` millimetres from the wrist's end towards the hand.
Path around_wrist(const Limbs& l, double at, double from, double to) {
    const Vec d = -l.carpus, side = square_to(ex, d), up = cross(side, d);
    const Vec c = cuff_of(l) + d * at;
    Path path;
    for (int i = 0; i <= 48; ++i) {
        const double a = in_radians(mix(from, to, i / 48.0));
        path.push_back(c + side * (34 * l.body.across * std::cos(a)) +
                       up * (22 * l.body.across * std::sin(a)));
    }
    return path;
}

/// The closing tab on the back of the hand; seen from the side it would look like a cut.
void add_tab(Plate& plate, const Limbs& l) {
    constexpr double facing = .7;
    if ((plate.shot().camera * l.direction(ez)).z < facing) return;
    const double k = l.body.across;
    Path tab;
    for (const Vec p : {Vec{-16, 14, 20}, Vec{10, 15, 20}, Vec{14, 19, 20}, Vec{14, 27, 20},
                        Vec{10, 31, 20}, Vec{-16, 30, 20}}) {
        const Vec to = p * k;
        const Vec from = tab.empty() ? to : tab.back();
        for (int i = 1; i <= 8; ++i)
            tab.push_back(lerp(from, to, i / 8.0));
    }
    add_skin_path(plate, l, tab, Pen::detail, false);
}

} // namespace

Vec cuff_of(const Limbs& l) { return l.wrist * .5; }

void add_glove_lines(Plate& plate, const Limbs& l) {
    add_skin_path(plate, l, around_wrist(l, 0, 0, 360), Pen::inner, false);
    add_skin_path(plate, l, around_wrist(l, 3, 0, 360), Pen::hatch, true);
    add_tab(plate, l);
    // Seams along the fingers' sides.
    for (int f = 0; f < fingers; ++f) {
        Path seam;
        const PosedFinger& p = l.finger[f];
        for (int j = 0; j < 3; ++j) {
            const Vec back = unit_vector(cross(p.axis, p.bone[j]));
            const Vec off = (back * .75 - p.axis * .66) * l.body.ray[f].radius[j];
            for (int i = 0; i < 8; ++i)
                seam.push_back(lerp(p.joint[j], p.joint[j + 1], i / 8.0) + off);
        }
        add_skin_path(plate, l, seam, Pen::hatch, true);
    }
}

} // namespace hand
