// The parts pages are made of: titles, paragraphs, the coach's words, figures, columns.
#pragma once

#include "figure/easel.hpp"
#include "page/block.hpp"

#include <algorithm>
#include <cmath>
#include <string>
#include <string_view>
#include <vector>

namespace page {

/// The widest that running text is set, em: 75 to 80 letters, the most that an eye finds back from.
inline constexpr double widest_measure = 33;

/// Width of the column for content, points. The same on right-hand and left-hand pages.
double column_width(const figure::Easel& easel);

/// A5, and large print on any paper: what else stands on one side takes two, such as a drill with
/// its fourteen days beside each other.
bool is_narrow(const figure::Easel& easel);

/// Width of `n` of six columns with the gutters between them.
double columns(const figure::Easel& easel, int n);

/// The question a page answers: a short strong bar and the words, which keep to `text_width` (0: to
/// the column).
Block page_title(const figure::Easel& easel, std::string_view words, double text_width = 0);

/// A heading inside a page; stays with what follows.
Block heading(const figure::Easel& easel, std::string_view words, double space_before = 14);

/// Running text that may be cut between lines, never leaving one line alone.
Block text_block(const figure::Easel& easel, theme::Text text, std::string_view words,
                 double space_before = 4, double width = 0);

/// Notes in two columns of even height where one would be too wide to read, else in one.
void add_small_print(std::vector<Block>& blocks, const figure::Easel& easel, theme::Text text,
                     const std::vector<std::string>& paragraphs, double space_before);

/// A drawing as one piece. Its message becomes the figure's alternative text.
Block figure_block(std::string name, ink::Drawing drawing, double space_before = 8);

/// A drawing as one piece that brings its own structure with it.
Block drawn_block(std::string name, ink::Drawing drawing, double space_before);

/// One piece out of drawings set side by side, tops level.
struct Cell {
    ink::Drawing drawing;
    double x = 0;
};
ink::Drawing side_by_side(const std::vector<Cell>& cells);

/// One drawing out of drawings set under each other.
ink::Drawing stacked(const std::vector<ink::Drawing>& parts, double gap);

/// Builds with the largest size of `most`, `most - step` and so on above `least` whose height is
/// within `room`; false when none is. `slope`: how much lower a page gets at best when the size
/// goes down by one; steps that cannot be enough are not built.
template <class Build>
bool built_to_fit(double most, double least, double step, double slope, double room,
                  const Build& build) {
    for (double size = most; size > least;) {
        const double over = build(size) - room;
        if (over <= 0) return true;
        size -= step * std::max(1.0, std::floor(over / (slope * step)));
    }
    return false;
}

/// Wraps a drawing in a structure element; a figure takes its message as alternative text.
ink::Drawing tagged(ink::Drawing drawing, std::string_view role);

/// A row "label | coach's words", the words in the coach's letter.
ink::Drawing labelled(const figure::Easel& easel, std::string_view label, theme::Text text,
                      std::string_view words, double width, double label_width);

/// A thin frame of that width around a drawing.
ink::Drawing framed(const figure::Easel& easel, const ink::Drawing& body, double width, double pad);

/// The text as it is, or cut with "…" so that it is at most `room` wide.
std::string cut(const figure::Easel& easel, const ink::Style& style, const std::string& text,
                double room);

/// A thin rule across.
ink::Drawing rule(const figure::Easel& easel, double width, double weight = 0.5);

/// Empty height.
ink::Drawing gap(double width, double height);

} // namespace page
