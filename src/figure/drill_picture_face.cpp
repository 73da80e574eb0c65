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

/// Seen along the target line from behind: back and leading edge lean alike.
void waist_high(Sketch& s) {
    s.scene({-520, -1680, 1220, 1700});
    s.line({{-420, 0}, {560, 0}}, Sketch::thin);
    s.limbs({{{{0, -50}, {80, -480}, {-90, -880}}, 130},
             {{{-10, -35}, {170, -35}}, 70},
             {{{-90, -900}, {30, -1110}, {150, -1330}}, 230}});
    s.circle({270, -1500}, 112);
    s.limbs({{{{150, -1310}, {210, -1120}, {290, -960}}, 90}});
    s.dashed({{-270, -910}, {60, -1500}}); // along the back
    const Points blade{{395, -800}, {465, -770}, {590, -1000}, {570, -1060}, {525, -1035}};
    s.limbs({{{{290, -960}, {430, -850}}, 26}}, Sketch::usual,
            ink::grey(0.9)); // the shaft, foreshortened
    s.shape(blade);
    s.line({{395, -800}, {525, -1035}}, 2.6); // the leading edge
    s.dashed({{370, -755}, {395, -800}});
    s.dashed({{525, -1035}, {600, -1170}});
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
    s.scene({-420, -560, 840, 640});
    const double xs[] = {-300, 0, 300};
    for (const double x : xs) {
        s.dashed({{x * 0.12, -40}, {x * 0.86, -300}});
        s.rect({x - 34, -390, 68, 68});
    }
    s.tick({0, -356}, 24);
    s.words_unturned("drillpic.call.left", {-300, -415});
    s.words_unturned("drillpic.call.centre", {0, -415});
    s.words_unturned("drillpic.call.right", {300, -415});
    s.ball({0, 0});
    s.iron({0, 26}, 0, 210);
}

} // namespace figure::scene
