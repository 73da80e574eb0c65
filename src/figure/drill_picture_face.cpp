// Scenes of the face drills.
#include "figure/drill_picture_scenes.hpp"

namespace figure::scene {

void edge_line(Sketch& s) {
    s.scene({-250, -215, 410, 330});
    s.rect({-130, -22, 270, 22}, ink::grey(0.9)); // the tape
    s.iron({0, 0}, 0, 190);
    s.target({0, -46}, 52);
    s.dashed({{0, 36}, {0, 120}});
}

void waist_high(Sketch& s) {
    s.scene({-1180, -1740, 1900, 1760});
    s.line({{-1150, 0}, {640, 0}}, Sketch::thin);
    s.person(460, {-400, -960});
    s.limbs({{{{-400, -960}, {-1010, -975}}, 16}}, Sketch::usual);
    s.limbs({{{{-380, -955}, {-600, -962}}, 34}}, Sketch::usual, ink::grey(0.9));
    s.shape({{-1005, -985}, {-1110, -1090}, {-1140, -1060}, {-1060, -950}});
    // where it stops
    s.line({{-1120, -860}, {-880, -860}}, 2.4);
    s.arrow_along(Sketch::arc({0, -1100}, 900, 100, 150), Sketch::usual);
    s.target_side({330, -300}, 150);
}

void cushion(Sketch& s) {
    s.scene({-330, -240, 590, 390});
    s.hatched({-230, -232, 460, 34}, 3.2); // wall
    s.line({{-230, -198}, {230, -198}}, Sketch::heavy);
    s.round_rect({-190, -196, 380, 196}, 56);
    s.line({{-150, -170}, {-162, -184}}, Sketch::thin);
    s.line({{150, -170}, {162, -184}}, Sketch::thin);
    s.iron({0, 0}, 0, 260);
    s.arrow({0, 104}, {0, 40}, Sketch::heavy);
    s.target({205, 130}, 60);
}

void gate(Sketch& s) {
    s.scene({-330, -400, 560, 520});
    s.target({0, -255}, 90);
    s.dashed({{0, -30}, {0, -100}});
    s.dashed({{0, -148}, {0, -240}});
    // the way is longer than drawn
    for (const double y : {-112.0, -136.0})
        s.path(ink::Path{}.move({-34, y + 8}).curve({-12, y - 14}, {12, y + 22}, {34, y}),
               Sketch::usual);
    for (const double x : {-54.0, 54.0})
        s.circle({x, -220}, 11, ink::black);
    s.line({{-43, -190}, {43, -190}}, Sketch::thin);
    s.line({{-43, -198}, {-43, -182}}, Sketch::thin);
    s.line({{43, -198}, {43, -182}}, Sketch::thin);
    s.noted("drillpic.gate.wide", {82, -210}, text::Align::left);
    s.ball({0, 0});
    s.putter({0, 30}, 240);
}

void ruler(Sketch& s) {
    s.scene({-300, -330, 520, 440});
    s.rect({-16, -290, 32, 310});
    for (int i = 0; i < 15; ++i) {
        const double y = -270 + 20.0 * i;
        s.line({{16, y}, {i % 5 == 0 ? 2.0 : 8.0, y}}, Sketch::thin);
    }
    s.ball({0, 0});
    s.putter({0, 30}, 220);
    s.arrow({0, -40}, {0, -250}, Sketch::heavy);
    s.target({130, -60}, 170);
}

void call_it(Sketch& s) {
    s.scene({-330, -480, 660, 560});
    const double xs[] = {-200, 0, 200};
    for (const double x : xs) {
        s.dashed({{x * 0.12, -40}, {x * 0.86, -300}});
        s.rect({x - 34, -390, 68, 68});
    }
    s.tick({0, -356}, 24);
    s.words_unturned("drillpic.call.left", {-200, -415});
    s.words_unturned("drillpic.call.centre", {0, -415});
    s.words_unturned("drillpic.call.right", {200, -415});
    s.ball({0, 0});
    s.iron({0, 26}, 0, 210);
}

} // namespace figure::scene
