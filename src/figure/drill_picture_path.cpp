// Scenes of the path drills, seen from above.
#include "figure/drill_picture_scenes.hpp"

namespace figure::scene {

namespace {

void towel_flat(Sketch& s, ink::Rect box) {
    s.rect(box);
    for (const double y : {box.y + 18, box.bottom() - 18})
        s.line({{box.x, y}, {box.right(), y}}, Sketch::thin);
}

/// Both shoes of a player whose toes are 430 mm from the ball.
void stance(Sketch& s, double width) {
    s.shoe({-570, -width / 2}, 0);
    s.shoe({-570, width / 2}, 0);
}

} // namespace

void corridor(Sketch& s) {
    s.scene({-640, -420, 1080, 720});
    s.shoe({-490, -150});
    s.shoe({-490, 150});
    towel_flat(s, {-252, -250, 160, 500});
    towel_flat(s, {92, -250, 160, 500});
    s.iron({0, 40}, 0, 300);
    s.target({0, -110}, 220);
    s.dashed({{0, 90}, {0, 240}});
}

void soft_box(Sketch& s) {
    s.scene({-720, -420, 1130, 740});
    stance(s, 320);
    s.ball({0, 0});
    s.iron({0, 28}, 0, 330);
    // the empty box beyond and just behind the ball line
    s.rect({90, 70, 250, 190});
    s.line({{90, 70}, {340, 260}}, Sketch::thin);
    s.line({{340, 70}, {90, 260}}, Sketch::thin);
    s.arrow_along({{-120, 300}, {-60, 160}, {-20, 60}}, Sketch::heavy);
    s.target({0, -120}, 210);
}

void drawn_back_foot(Sketch& s) {
    s.scene({-900, -430, 1170, 760});
    s.shoe({-570, -160});
    s.shoe({-570, 160}, 0, true);
    s.shoe({-715, 160}, 0);
    s.arrow({-570, 244}, {-690, 244}, Sketch::heavy);
    s.ball({0, 0});
    s.iron({0, 28}, 6, 330);
    s.arrow_along({{-110, 290}, {-50, 150}, {-24, 76}}, Sketch::usual);
    s.dashed({{18, -40}, {120, -300}});
    s.target({0, -120}, 210);
}

void two_lines(Sketch& s) {
    s.scene({-420, -420, 760, 700});
    s.limbs({{{{-30, 270}, {30, -270}}, 22}}, Sketch::usual, ink::grey(0.9)); // about six degrees
    s.limbs({{{{0, 270}, {0, -270}}, 22}});
    s.circle({0, 0}, 21.3);
    s.iron({0, 150}, 0, 330);
    s.arrow({150, 90}, {150, -70}, Sketch::usual);
    s.arrow({200, -70}, {200, 90}, Sketch::usual);
    s.target({0, -282}, 60);
}

} // namespace figure::scene
