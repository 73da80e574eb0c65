// Paper, margins, letters and inks: everything a coach may restyle without a compiler.
#pragma once

#include "ink/mark.hpp"

#include <array>
#include <cstdint>
#include <string>

namespace theme {

/// The papers of the house. A4 and A5 by ISO 216, Letter by ANSI Y14.1.
enum class Paper : std::uint8_t { a4, letter, a5 };
ink::Size size_of(Paper paper); ///< points

/// Every kind of text there is. A size below `smallest` of the theme is a template error.
enum class Text : std::uint8_t {
    title,       ///< the page's one question
    heading,     ///< a part of a page
    lead,        ///< the program's one sentence that matters, such as the verdict
    body,        ///< the program's plain words
    coach,       ///< the coach's own words
    coach_large, ///< the coach's own words on page 1
    step,        ///< the steps of a drill
    cue,         ///< the one cue of a drill
    label,       ///< a short bold word over or beside something
    caption,     ///< under a figure
    small,       ///< notes
    tick,        ///< numbers and words along an axis
    table,       ///< cells
    table_head,  ///< column heads
    furniture,   ///< running head and foot
    numeral,     ///< the large number of a drill page
};
inline constexpr std::size_t text_count = 16;

/// Marks where a sheet is to be punched.
enum class Punch : std::uint8_t {
    none,
    two,   ///< ISO 838: 80 mm apart, 12 mm from the edge
    four,  ///< the same with one more 80 mm above and below
    three, ///< 108 mm (4.25 in) apart, as ring binders in the USA
};

struct Setting {
    ink::Style style;
    double leading = 14; ///< distance of baselines, points
};

/// Line widths, points. Never thinner than 0.35, data never thinner than 0.8.
struct Widths {
    double rule = 0.5, axis = 0.6, data = 0.9, strong = 1.4;
};

struct Theme {
    Paper paper = Paper::a4;
    double binding = 25, outer = 15, top = 22, bottom = 18; ///< margins, millimetres
    double gutter = 4;                                      ///< between columns, millimetres
    Punch punch = Punch::none;
    std::array<Setting, text_count> texts;
    Widths widths;
    ink::Colour text = ink::black;
    ink::Colour quiet = ink::grey(0.27); ///< secondary text: still at least 7 : 1 on white
    ink::Colour rule = ink::grey(0.45);  ///< rules and axes
    ink::Colour tint = ink::grey(0.90);  ///< panels that may vanish in a photocopy without loss
    ink::Colour accent{0.0, 0.36, 0.60}; ///< repeats what shape already says
    double smallest = 8.5;               ///< smallest text, points

    const Setting& setting(Text t) const { return texts[static_cast<std::size_t>(t)]; }
    ink::Size page() const { return size_of(paper); }
    /// The box for content. Right-hand pages bind on the left, left-hand pages on the right.
    ink::Rect live(bool right_hand) const;
};

/// The house style, before any template: `large_print` sets 17 point text and lays out anew.
Theme house_style(Paper paper, bool large_print);

} // namespace theme
