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
             {{{0, 34}, {0, 64}}, 58},
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
    s.scene({-60, -110, 560, 220});
    s.limbs({{{{240, 0}, {440, 0}}, 9}}, Sketch::usual);
    s.shape({{432, -6}, {470, -10}, {478, 48}, {446, 60}, {440, 6}});
    s.limbs({{{{0, 0}, {250, 0}}, 25}}, Sketch::heavy, ink::grey(0.9));
    s.limbs({{{{-20, -38}, {70, -40}}, 48}}); // pad on top
    s.circle({122, 31}, 17);                  // the forefinger, end on
    s.dashed({{122, 50}, {122, 104}});
    s.arrow({460, 66}, {460, 108}, Sketch::heavy);
    s.arrow({24, -106}, {24, -66}, Sketch::heavy);
}

void golfers_eye(Sketch& s) {
    s.scene({-150, -190, 300, 300});
    // the eye and where it looks
    ink::Path eye;
    eye.move({-48, -150}).curve({-20, -186}, {20, -186}, {48, -150});
    eye.curve({20, -118}, {-20, -118}, {-48, -150}).close();
    s.solid(eye);
    s.circle({0, -151}, 12, ink::black, 0);
    s.dashed({{-10, -122}, {-22, -46}});
    s.dashed({{4, -122}, {-14, -10}});
    // two bumps beside the handle
    s.limbs({{{{8, -66}, {8, 106}}, 24}}, Sketch::heavy, ink::grey(0.9));
    s.path(ink::Path{}.move({-6, -52}).curve({-34, -50}, {-34, -18}, {-10, -14}), Sketch::heavy);
    s.path(ink::Path{}.move({-10, -12}).curve({-34, -10}, {-34, 20}, {-6, 24}), Sketch::heavy);
}

void butt_end(Sketch& s) {
    s.scene({-100, -66, 210, 120});
    s.limbs({{{{-20, 20}, {92, 20}}, 40}}, Sketch::heavy, ink::grey(0.9));
    s.line({{-26, 1}, {-26, 39}}, Sketch::usual); // the cap of the handle
    s.limbs({{{{-16, -20}, {70, -22}}, 38}});
    // the pencil stops at the closed joint
    s.shape({{-98, -6}, {-64, -6}, {-50, -1}, {-64, 4}, {-98, 4}});
    s.line({{-64, -6}, {-64, 4}}, Sketch::thin);
    s.line({{-46, -16}, {-46, 12}}, 2.0);
}

void kettle(Sketch& s) {
    s.scene({-190, -330, 720, 440});
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
    s.line({{-180, 0}, {70, 0}}, Sketch::usual); // the worktop ends there
    s.line({{70, 0}, {70, 26}}, Sketch::usual);
    s.line({{70, 26}, {520, 26}}, Sketch::usual);
    // the club waits behind the wall
    s.limbs({{{{446, 10}, {474, -204}}, 9}}, Sketch::usual);
    s.limbs({{{{472, -190}, {486, -302}}, 19}}, Sketch::heavy, ink::grey(0.9));
    s.shape({{440, -2}, {456, 2}, {512, 14}, {510, 25}, {440, 25}});
    s.limbs({{{{190, 20}, {190, -250}}, 16}}, Sketch::usual, ink::grey(0.6));
    s.words("drillpic.kettle.apart", {345, 84});
}

void joined(Sketch& s) {
    s.scene({-130, -150, 260, 300});
    s.limbs({{{{0, -140}, {0, 140}}, 24}}, Sketch::heavy, ink::grey(0.9));
    // where each hand lies: the trail hand's place covers the lead thumb
    s.path(ink::Path::round_rect({-42, -112, 84, 100}, 30), Sketch::heavy);
    s.limbs({{{{6, -30}, {6, 34}}, 18}});
    s.path(ink::Path::round_rect({-46, -24, 92, 100}, 30), Sketch::heavy);
    s.arrow({116, -60}, {56, 6}, Sketch::heavy);
}

void light_to_firm(Sketch& s) {
    s.scene({-170, -110, 340, 220});
    s.limbs({{{{-160, -40}, {150, -40}}, 25}}, Sketch::heavy, ink::grey(0.9));
    s.round_rect({-100, -84, 120, 88}, 34, ink::white, Sketch::usual); // where the hand lies
    s.line({{-20, -40}, {66, -40}}, 2.4); // the pen mark runs over glove and handle
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
