// Scenes of the speed, aim and test drills.
#include "figure/drill_picture_scenes.hpp"

namespace figure::scene {

void swish(Sketch& s) {
    s.scene({-1150, -1740, 2300, 1760});
    s.line({{-1100, 0}, {1120, 0}}, Sketch::thin);
    // the club upside down: the head is in the hands
    s.person(480, {-120, -820});
    s.limbs({{{{-120, -820}, {-560, -140}}, 16}}, Sketch::usual);
    s.limbs({{{{-430, -340}, {-570, -125}}, 34}}, Sketch::usual, ink::grey(0.9));
    s.shape({{-130, -840}, {-95, -800}, {-30, -880}, {-60, -930}});
    s.arrow_along(Sketch::arc({0, -900}, 880, 115, 20), Sketch::usual);
    s.line({{60, -50}, {60, 0}}, 2.4);
    // loud past the ball's place
    for (const double r : {110.0, 190.0, 270.0})
        s.line(Sketch::arc({420, -180}, r, -40, 50), Sketch::heavy);
    s.target_side({560, -1400}, 220);
}

void gears(Sketch& s) {
    s.scene({-60, -300, 720, 320});
    s.line({{540, -290}, {540, 10}}, 2.4); // the same finish for all
    for (int gear = 0; gear < 3; ++gear) {
        const double y = -250 + 110.0 * gear;
        s.circle({0, y}, 20, ink::black);
        s.arrow({40, y}, {526, y}, 0.8 + 0.9 * gear);
        for (int i = 0; i <= gear; ++i) {
            const double x = 190 + 44.0 * i;
            s.line({{x, y - 34}, {x + 26, y}, {x, y + 34}}, 1.4);
        }
    }
    s.line({{560, -250}, {620, -250}}, Sketch::thin);
    s.line({{560, -140}, {620, -140}}, Sketch::thin);
    s.line({{560, -30}, {620, -30}}, Sketch::thin);
}

void rails(Sketch& s) {
    s.scene({-760, -560, 1060, 900});
    s.shoe({-500, -170});
    s.shoe({-500, 170});
    s.limbs({{{{-330, 320}, {-330, -440}}, 16}}, Sketch::usual, ink::grey(0.9));
    s.limbs({{{{110, 320}, {110, -440}}, 16}}, Sketch::usual, ink::grey(0.9));
    s.ball({0, 0});
    s.iron({0, 28}, 0, 200);
    s.target({0, -60}, 330);
}

void ten(Sketch& s) {
    s.scene({-30, -40, 560, 290});
    for (int i = 0; i < 10; ++i) {
        const double x = 25 + 100.0 * (i % 5), y = 140.0 * (i / 5);
        s.circle({x + 25, y}, 22);
        s.rect({x, y + 34, 50, 50});
    }
}

} // namespace figure::scene
