// Scenes of the hold drills: the handle, the glove, the pencil.
#include "figure/drill_picture_scenes.hpp"

namespace figure::scene {

namespace {

/// The lead glove with its palm to the reader, fingers up; the thumb is at the left for the left
/// hand. Finger roots lie at y = 0, the wrist at y = 105.
void open_glove(Sketch& s) {
    s.limbs({{{{-32, 40}, {-62, 8}, {-74, -22}}, 24},
             {{{-30, 18}, {-36, -72}}, 20},
             {{{-10, 14}, {-11, -84}}, 20},
             {{{12, 16}, {14, -76}}, 20},
             {{{31, 24}, {38, -52}}, 18},
             {{{-28, 20}, {-26, 72}, {22, 76}, {30, 24}, {0, 30}, {0, 60}, {-14, 44}}, 26},
             {{{-14, 70}, {-14, 100}, {16, 100}, {16, 76}}, 30}});
    s.line({{-36, 116}, {38, 116}}, Sketch::thin);
}

} // namespace

void open_palm(Sketch& s) {
    s.scene({-120, -102, 240, 226});
    open_glove(s);
    s.limbs({{{{-112, -40}, {104, 52}}, 23}}, Sketch::heavy, ink::grey(0.9));
    s.dashed({{-44, -12}, {42, 24}}, Sketch::usual);
    s.arrow({74, -40}, {58, 18}, Sketch::usual);
}

void balance(Sketch& s) {
    s.scene({-60, -130, 560, 250});
    s.limbs({{{{240, 0}, {440, 0}}, 9}}, Sketch::usual);
    s.shape({{432, -6}, {470, -10}, {478, 48}, {446, 60}, {440, 6}});
    s.limbs({{{{0, 0}, {250, 0}}, 25}}, Sketch::heavy, ink::grey(0.9));
    s.limbs({{{{118, 90}, {150, 34}, {128, 24}, {100, 36}}, 21}});  // bent forefinger
    s.limbs({{{{-20, -62}, {16, -40}, {52, -38}, {84, -66}}, 44}}); // pad on top
    s.limbs({{{{-20, -62}, {84, -66}}, 44}}, 0);
    s.arrow({460, 66}, {460, 112}, Sketch::heavy);
    s.arrow({16, -116}, {16, -72}, Sketch::usual);
}

void golfers_eye(Sketch& s) {
    s.scene({-150, -190, 300, 300});
    // the eye and where it looks
    ink::Path eye;
    eye.move({-48, -150}).curve({-20, -186}, {20, -186}, {48, -150});
    eye.curve({20, -118}, {-20, -118}, {-48, -150}).close();
    s.solid(eye);
    s.circle({0, -151}, 12, ink::black, 0);
    s.dashed({{-12, -122}, {-40, -22}});
    s.dashed({{8, -122}, {-4, -34}});
    s.limbs({{{{18, -62}, {18, 106}}, 23}}, Sketch::heavy, ink::grey(0.9));
    s.limbs({{{{-34, 0}, {-24, 54}, {14, 64}, {40, 20}, {10, 0}, {-10, 30}}, 46}});
    s.limbs({{{{-46, -2}, {-48, 2}}, 34}, {{{-10, -12}, {-10, -8}}, 34}});
    s.limbs({{{{-34, 16}, {24, 40}}, 44}}, 0);
    s.limbs({{{{38, 36}, {28, 84}}, 22}});
}

void butt_end(Sketch& s) {
    s.scene({-100, -66, 210, 140});
    s.limbs({{{{-20, 20}, {96, 20}}, 40}}, Sketch::heavy, ink::grey(0.9));
    s.limbs({{{{-40, 20}, {-38, 20}}, 40}}, Sketch::heavy, ink::grey(0.9));
    s.limbs({{{{-18, -20}, {10, -22}, {80, -28}}, 38}, {{{-18, -20}, {70, -34}}, 38}});
    s.limbs({{{{-18, -20}, {80, -28}}, 37}}, 0);
    // the pencil stops at the closed joint
    s.shape({{-96, -6}, {-62, -6}, {-50, -1}, {-62, 4}, {-96, 4}});
    s.line({{-62, -6}, {-62, 4}}, Sketch::thin);
    s.line({{-46, -14}, {-46, 10}}, Sketch::heavy);
}

void kettle(Sketch& s) {
    s.scene({-190, -330, 460, 350});
    ink::Path body;
    body.move({-110, 0}).curve({-130, -110}, {-95, -190}, {-30, -190});
    body.curve({35, -190}, {70, -110}, {50, 0}).close();
    s.path(ink::Path{}.move({-80, -178}).curve({-90, -280}, {30, -280}, {22, -178}), 3.2);
    s.shape({{40, -120}, {98, -176}, {116, -162}, {52, -70}});
    s.solid(body);
    s.limbs({{{{-30, -198}, {-30, -200}}, 22}});
    for (const double x : {90.0, 120.0}) {
        s.path(
            ink::Path{}.move({x + 14, -196}).curve({x - 8, -226}, {x + 36, -240}, {x + 14, -272}),
            Sketch::thin);
    }
    s.line({{-180, 0}, {262, 0}}, Sketch::usual);
    // the club waits beside it
    s.limbs({{{{166, -16}, {206, -230}}, 9}}, Sketch::usual);
    s.limbs({{{{203, -214}, {224, -326}}, 19}}, Sketch::heavy, ink::grey(0.9));
    s.shape({{160, -28}, {176, -24}, {232, -12}, {230, -1}, {160, -1}});
}

void joined(Sketch& s) {
    s.scene({-110, -150, 220, 300});
    s.limbs({{{{0, -140}, {0, 140}}, 23}}, Sketch::heavy, ink::grey(0.9));
    s.limbs({{{{-22, -84}, {-20, -30}, {18, -26}, {20, -84}}, 44}});
    s.limbs({{{{-20, -80}, {18, -30}}, 52}}, 0);
    s.limbs({{{{4, -40}, {6, 30}}, 22}}); // lead thumb down the handle
    s.limbs({{{{-18, -2}, {-20, 54}, {20, 58}, {30, 0}}, 44}});
    s.limbs({{{{-16, 0}, {22, 50}}, 50}, {{{24, 6}, {-16, 50}}, 48}}, 0);
    s.dashed({{-4, -16}, {-4, 26}, {6, 36}, {16, 26}, {16, -14}}, Sketch::thin);
    s.limbs({{{{-10, 44}, {-6, 92}}, 22}});
    s.arrow({98, -64}, {46, 4}, Sketch::heavy);
}

void light_to_firm(Sketch& s) {
    s.scene({-170, -110, 340, 220});
    s.limbs({{{{-160, -40}, {150, -40}}, 25}}, Sketch::heavy, ink::grey(0.9));
    s.limbs({{{{-78, -58}, {-70, -16}, {0, -14}, {6, -58}}, 46}});
    s.limbs({{{{-74, -54}, {0, -20}}, 54}, {{{-74, -20}, {0, -54}}, 54}}, 0);
    s.line({{29, -96}, {29, -30}}, Sketch::heavy); // pen mark over glove and handle
    s.line({{8, -62}, {60, -62}}, Sketch::heavy);
    // from light to firm
    s.shape({{-150, 96}, {150, 96}, {150, 40}});
    s.arrow({-17, 30}, {-17, 66}, Sketch::heavy);
    s.line({{-17, 70}, {-17, 96}}, Sketch::heavy);
}

void glove(Sketch& s) {
    s.scene({-120, -102, 240, 226});
    open_glove(s);
    s.hatched({4, 44, 34, 34}, 2.4); // worn under the pad
    s.path(ink::Path::circle({21, 62}, 34), Sketch::heavy);
    s.line({{46, 86}, {78, 116}}, 2.6);
}

} // namespace figure::scene
