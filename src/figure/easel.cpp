#include "figure/easel.hpp"

#include <algorithm>

namespace figure {

ink::Drawing paragraph(const Easel& easel, const theme::Setting& setting, std::string_view words,
                       double width, text::Align align) {
    const text::Lines set = easel.type.set(words, setting.style, width, setting.leading, align);
    ink::Drawing drawing;
    drawing.size = {width, set.height};
    for (const ink::Words& line : set.lines)
        drawing.add(line);
    return drawing;
}

ink::Drawing paragraph(const Easel& easel, theme::Text text, std::string_view words, double width,
                       text::Align align) {
    return paragraph(easel, easel.theme.setting(text), words, width, align);
}

ink::Words label(const Easel& easel, const ink::Style& style, std::string_view words, ink::Point at,
                 text::Align align) {
    ink::Words line = easel.type.line(words, style, at);
    if (align == text::Align::centre) line.at.x -= line.width / 2;
    if (align == text::Align::right) line.at.x -= line.width;
    return line;
}

ink::Words label(const Easel& easel, theme::Text text, std::string_view words, ink::Point at,
                 text::Align align) {
    return label(easel, easel.theme.setting(text).style, words, at, align);
}

ink::Style bold(const Easel& easel, theme::Text text) {
    ink::Style style = easel.theme.setting(text).style;
    style.weight = 700;
    style.colour = easel.theme.text;
    return style;
}

double middle(const ink::Style& style) { return style.size * 0.36; }

void hatch(ink::Drawing& drawing, const ink::Rect& box, double distance, double width,
           ink::Colour colour) {
    if (box.width <= 0 || box.height <= 0) return;
    ink::Path lines;
    const double step = distance * 1.41421356;
    for (double c = box.x - box.height + step / 2; c < box.right(); c += step) {
        // x - c = y - top, cut to the box on both sides
        const double from = std::max(c, box.x), to = std::min(c + box.height, box.right());
        if (to - from < 0.3) continue;
        lines.move({from, box.bottom() - (from - c)}).line({to, box.bottom() - (to - c)});
    }
    drawing.add(ink::Stroke{lines, width, colour, {}, ink::Cap::butt});
}

} // namespace figure
