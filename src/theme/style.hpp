// The house style as data: what templates/style/ says, with the values of the house as defaults.
#pragma once

#include "diag/source.hpp"
#include "theme/theme.hpp"

#include <vector>

namespace theme {

/// One row of the type scale, points.
struct Letters {
    double size = 11, leading = 15;
    double large = 17; ///< size in large print; the leading grows with it
    int weight = 400;
    bool coach = false; ///< set in the coach's letter
    friend bool operator==(const Letters&, const Letters&) = default;
};

/// Margins of a paper, millimetres.
struct Margins {
    double binding = 25, outer = 15, top = 22, bottom = 18;
    friend bool operator==(const Margins&, const Margins&) = default;
};

/// The pages the program can make.
enum class Page : std::uint8_t {
    one_thing,
    hold,
    evidence,
    why,
    drill,
    expect,
    second_drill,
    photographs,
    next,
    own ///< the coach's own title and text
};

/// One page of the plan.
struct Planned {
    Page page = Page::own;
    std::string title; ///< of an own page
    std::vector<std::string> text;
    bool lines = false; ///< room to write on below the text
    diag::Span span;
};

/// Limits of what a coach may set; the schema names the same ones.
inline constexpr double smallest_text = 8.5, largest_text = 72;
inline constexpr double least_binding = 18; ///< clear of the holes of ISO 838, millimetres
inline constexpr double least_outer = 6;

struct Style {
    std::array<Letters, text_count> letters;
    std::array<Margins, 3> papers; ///< A4, Letter, A5
    double gutter = 4;
    Punch punch = Punch::none;
    ink::Colour accent{0, 0x5c / 255.0, 0x99 / 255.0};
    std::vector<Planned> pages;
};

/// What the house does when no template says otherwise.
Style house();

/// A theme for one paper. Large print sets 17 point text and lays out anew.
Theme theme_of(const Style& style, Paper paper, bool large_print);

} // namespace theme
