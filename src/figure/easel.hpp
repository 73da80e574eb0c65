// What every figure is drawn with: letters, styles, sentences, and whose sheet it is.
#pragma once

#include "ink/mark.hpp"
#include "text/typesetter.hpp"
#include "theme/theme.hpp"
#include "unit/display.hpp"
#include "unit/quantity.hpp"
#include "words/catalogue.hpp"

#include <string_view>

namespace figure {

inline constexpr double mm = unit::points_in_a_millimetre;

struct Easel {
    const text::Typesetter& type;
    const theme::Theme& theme;
    const words::Speaker& words;
};

/// A paragraph of one style; its size is what it takes.
ink::Drawing paragraph(const Easel& easel, theme::Text text, std::string_view words, double width,
                       text::Align align = text::Align::left);

/// The same with a changed style (weight, colour, size).
ink::Drawing paragraph(const Easel& easel, const theme::Setting& setting, std::string_view words,
                       double width, text::Align align = text::Align::left);

/// One line whose left end, middle or right end stands at `at` (baseline).
ink::Words label(const Easel& easel, theme::Text text, std::string_view words, ink::Point at,
                 text::Align align = text::Align::left);
ink::Words label(const Easel& easel, const ink::Style& style, std::string_view words, ink::Point at,
                 text::Align align = text::Align::left);

/// The style of `text` in bold.
ink::Style bold(const Easel& easel, theme::Text text);

/// Half the height of a small letter: a label's baseline stands this far below what it names.
double middle(const ink::Style& style);

/// Hatch lines at 45 degrees, clipped to `box`.
void hatch(ink::Drawing& drawing, const ink::Rect& box, double distance, double width,
           ink::Colour colour);

} // namespace figure
