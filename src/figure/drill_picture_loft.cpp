// Scenes of the loft drills, seen from the front of the player: the target lies to the right.
#include "figure/drill_picture_scenes.hpp"

namespace figure::scene {

void side_iron(Sketch& s, ink::Point at, double lean, double height) {
    const auto up = [&](double h) { return ink::Point{at.x - 34 + lean * h, at.y - h}; };
    s.limbs({{{up(30), up(height)}, 10}}, Sketch::usual);
    if (height > 400)
        s.limbs({{{up(height * 0.62), up(height)}, 24}}, Sketch::usual, ink::grey(0.9));
    s.shape({{at.x - 44, at.y - 4},
             {at.x + 4, at.y},
             {at.x - 14 + lean * 60, at.y - 64},
             {at.x - 30 + lean * 60, at.y - 64}});
}

void handle_first(Sketch& s) {
    s.scene({-470, -700, 900, 730});
    s.line({{-460, 0}, {420, 0}}, Sketch::usual);
    s.hatched({366, -420, 44, 420}, 3.2);
    s.line({{366, -420}, {366, 0}}, Sketch::heavy);
    s.round_rect({130, -260, 232, 258}, 70);
    side_iron(s, {128, 0}, 0.22, 640);
    s.dashed({{94, -30}, {94, -680}});
    s.arrow({94, -664}, {226, -664}, Sketch::heavy);
    s.arrow({-80, -80}, {50, -80}, Sketch::heavy);
    s.target_side({-440, -60}, 200);
}

void punch(Sketch& s) {
    s.scene({-60, -420, 1120, 450});
    s.line({{-40, 0}, {1040, 0}}, Sketch::usual);
    // a tree in the way
    s.limbs({{{{640, 0}, {640, -300}}, 34}});
    s.limbs({{{{520, -292}, {600, -330}, {690, -330}, {770, -290}, {640, -310}}, 130}});
    s.limbs({{{{560, -300}, {720, -300}}, 120}}, 0);
    s.line({{540, -200}, {760, -200}}, Sketch::thin);
    s.circle({20, -14}, 14);
    ink::Path low;
    low.move({50, -26}).curve({300, -160}, {640, -190}, {900, -50});
    s.path(low, Sketch::heavy);
    s.arrow({882, -62}, {930, -26}, Sketch::heavy);
    ink::Path high;
    s.dashed({{50, -40}, {180, -190}, {320, -330}, {420, -390}});
}

void landings(Sketch& s) {
    s.scene({-60, -330, 1120, 360});
    s.line({{-40, 0}, {1040, 0}}, Sketch::usual);
    s.circle({20, -14}, 14);
    const double far[] = {430, 690, 950};
    for (const double x : far) {
        const double apex = x * 0.30;
        ink::Path flight;
        flight.move({44, -24}).curve({x * 0.35, -apex * 1.3}, {x * 0.75, -apex * 1.2}, {x, -20});
        s.path(flight, Sketch::usual);
        s.rect({x - 55, -14, 110, 14}, ink::black);
    }
    s.target_side({90, -300}, 170);
}

} // namespace figure::scene
