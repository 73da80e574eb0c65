#include "hand/picture.hpp"

namespace hand {
namespace {

void turn_over(Outline& o, double width) {
    o.start.x = width - o.start.x;
    for (Cubic& c : o.pieces) {
        c.a.x = width - c.a.x;
        c.b.x = width - c.b.x;
        c.to.x = width - c.to.x;
    }
}

} // namespace

Picture mirrored(Picture p) {
    for (auto& mark : p.marks) {
        if (Area* area = std::get_if<Area>(&mark)) {
            for (Outline& o : area->loops)
                turn_over(o, p.width);
        } else {
            turn_over(std::get<Line>(mark).path, p.width);
        }
    }
    for (Anchor& a : p.anchors)
        a.at.x = p.width - a.at.x;
    return p;
}

} // namespace hand
