#include "figure/symbol.hpp"

#include <cmath>

namespace figure {

namespace {

ink::Path diamond(ink::Point c, double r) {
    return ink::Path::polyline({{c.x, c.y - r}, {c.x + r, c.y}, {c.x, c.y + r}, {c.x - r, c.y}},
                               true);
}

} // namespace

void put(ink::Drawing& drawing, Symbol symbol, ink::Point at, double radius, ink::Colour colour) {
    const double line = std::max(0.8, radius * 0.3);
    switch (symbol) {
    case Symbol::before:
        drawing.add(ink::Fill{ink::Path::circle(at, radius - line / 2), ink::white});
        drawing.add(ink::Stroke{
            ink::Path::circle(at, radius - line / 2), line, colour, {}, ink::Cap::butt});
        break;
    case Symbol::after:
        drawing.add(ink::Fill{ink::Path::circle(at, radius), colour});
        break;
    case Symbol::cold:
        drawing.add(ink::Fill{diamond(at, radius * 1.15), ink::white});
        drawing.add(ink::Stroke{diamond(at, radius * 1.15), line, colour, {}, ink::Cap::butt});
        drawing.add(ink::Fill{ink::Path::circle(at, radius * 0.36), colour});
        break;
    case Symbol::set_aside: {
        const double r = radius * 0.85;
        ink::Path cross;
        cross.move({at.x - r, at.y - r}).line({at.x + r, at.y + r});
        cross.move({at.x - r, at.y + r}).line({at.x + r, at.y - r});
        drawing.add(ink::Stroke{cross, std::max(0.8, line * 0.9), colour, {}, ink::Cap::butt});
        break;
    }
    }
}

std::vector<double> dash_of(Symbol symbol, double scale) {
    if (symbol == Symbol::before) return {2.2 * scale, 1.5 * scale};
    if (symbol == Symbol::cold) return {4 * scale, scale, scale, scale};
    return {};
}

void arrow(ink::Drawing& drawing, ink::Point from, ink::Point to, double width, double head,
           ink::Colour colour) {
    const ink::Point d = to - from;
    const double length = std::hypot(d.x, d.y);
    if (length < 1e-6) return;
    const ink::Point u{d.x / length, d.y / length}, n{-u.y, u.x};
    const double h = std::min(head, length);
    const ink::Point base = to - u * h;
    drawing.add(ink::Stroke{
        ink::Path::segment(from, base + u * (h * 0.3)), width, colour, {}, ink::Cap::butt});
    drawing.add(ink::Fill{
        ink::Path::polyline(
            {to, base + n * (h * 0.42), base + u * (h * 0.22), base - n * (h * 0.42)}, true),
        colour});
}

} // namespace figure
