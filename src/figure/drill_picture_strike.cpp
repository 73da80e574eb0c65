// Scenes of the strike drills.
#include "figure/drill_picture_scenes.hpp"

namespace figure::scene {

void brush_line(Sketch& s) {
    s.scene({-720, -420, 1040, 720});
    s.shoe({-490, -170});
    s.shoe({-490, 170});
    s.dashed({{-340, 0}, {-150, 0}}); // middle of the stance
    s.line({{-140, 0}, {220, 0}}, 2.4);
    s.hatched({-36, -120, 72, 110}, 2.4); // where the club brushes
    s.path(ink::Path::round_rect({-36, -120, 72, 110}, 30), Sketch::thin);
    s.arrow({130, 150}, {130, -90}, Sketch::usual);
    s.target({0, -170}, 170);
}

void towel(Sketch& s) {
    s.scene({-560, -440, 1000, 480});
    s.line({{-550, 0}, {420, 0}}, Sketch::usual);
    s.circle({60, -22}, 21.3);
    s.round_rect({-330, -26, 200, 24}, 10, ink::grey(0.9));
    s.line({{-130, 22}, {38, 22}}, Sketch::thin);
    s.line({{-130, 12}, {-130, 32}}, Sketch::thin);
    s.line({{38, 12}, {38, 32}}, Sketch::thin);
    s.arrow_along(Sketch::arc({90, -520}, 520, 148, 80), Sketch::heavy);
    s.target_side({120, -170}, 140);
}

void tee(Sketch& s) {
    s.scene({-360, -300, 720, 360});
    s.line({{-350, 0}, {350, 0}}, Sketch::usual);
    for (const double x : {-320.0, -250.0, 180.0, 260.0, 320.0})
        s.line({{x, 0}, {x - 7, -16}}, Sketch::thin);
    s.shape({{-4, 40}, {-7, -16}, {-15, -30}, {15, -30}, {7, -16}, {4, 40}});
    side_iron(s, {-70, -12}, 0.12, 260);
    s.arrow({-54, -50}, {70, -50}, Sketch::heavy);
    // the tee jumps
    for (const double a : {-60.0, -35.0, -10.0}) {
        const Points ray = Sketch::arc({10, -36}, 46, a, a + 1);
        const Points out = Sketch::arc({10, -36}, 74, a, a + 1);
        if (a < -20) s.line({ray.front(), out.front()}, Sketch::thin);
    }
    s.target_side({150, -170}, 120);
}

void face_dots(Sketch& s) {
    // the face as the ball sees it: the heel of a right-hander's iron is to the right
    s.scene({-60, -80, 120, 104});
    ink::Path face;
    face.move({36, 18}).line({-26, 18}).curve({-52, 18}, {-50, -26}, {-40, -46});
    face.curve({-34, -52}, {-22, -48}, {-16, -44}).line({36, -6}).close();
    s.limbs({{{{40, 8}, {50, -74}}, 11}}, Sketch::usual);
    s.solid(face, ink::white, Sketch::heavy);
    for (int i = 0; i < 5; ++i) {
        const double y = 12 - 6.0 * i;
        s.line({{-26, y}, {26, y}}, Sketch::thin);
    }
    s.circle({-3, -2}, 12, ink::white, Sketch::heavy);
    for (const ink::Point p : {ink::Point{-5, -4}, {1, 1}, {-7, 3}, {3, -6}})
        s.circle(p, 2.0, ink::black, 0);
    s.circle({-24, -10}, 2.0, ink::black, 0);
}

void feet_together(Sketch& s) {
    s.scene({-720, -360, 960, 600});
    s.shoe({-490, -52});
    s.shoe({-490, 52});
    s.ball({0, 0});
    s.iron({0, 28}, 0, 330);
    s.target({0, -90}, 180);
    s.arrow({-650, -150}, {-650, -70}, Sketch::usual);
    s.arrow({-650, 150}, {-650, 70}, Sketch::usual);
}

} // namespace figure::scene
