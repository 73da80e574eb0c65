// The scenes of the drill library, each drawn for a right-hander.
#pragma once

#include "figure/drill_picture_sketch.hpp"

namespace figure::scene {

// hold: things only; a posed hand takes their place where one is ready
void open_palm(Sketch& s);
void balance(Sketch& s);
void golfers_eye(Sketch& s);
void butt_end(Sketch& s);
void kettle(Sketch& s);
void joined(Sketch& s);
void light_to_firm(Sketch& s);
void glove(Sketch& s);
// face
void edge_line(Sketch& s);
void waist_high(Sketch& s);
void cushion(Sketch& s);
void gate(Sketch& s);
void ruler(Sketch& s);
void call_it(Sketch& s);
// path
void corridor(Sketch& s);
void soft_box(Sketch& s);
void drawn_back_foot(Sketch& s);
void two_lines(Sketch& s);
// loft
void handle_first(Sketch& s);
void punch(Sketch& s);
void landings(Sketch& s);
// strike
void brush_line(Sketch& s);
void towel(Sketch& s);
void tee(Sketch& s);
void face_dots(Sketch& s);
void feet_together(Sketch& s);
// speed, aim and test
void swish(Sketch& s);
void gears(Sketch& s);
void rails(Sketch& s);
void ten(Sketch& s);

/// The head and lower shaft of an iron from the side, sole on the ground at `at`; `lean` is how far
/// the shaft's top stands towards the target for each millimetre of height.
void side_iron(Sketch& s, ink::Point at, double lean, double height);

} // namespace figure::scene
