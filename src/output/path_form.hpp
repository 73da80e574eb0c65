// Long runs of paths, written as PDF operators past Cairo, which prints every coordinate with
// snprintf and measures every path twice: a hand costs Cairo ten times as much. Internal to output.
#pragma once

#include "ink/mark.hpp"
#include "output/cairo_handle.hpp"

#include <span>

class QPDF;

namespace output {

/// Documents keep coordinates on a grid: 16 steps in a point, 0.02 mm, and a tenth of the file.
inline constexpr int grid = 16;

/// How many of the marks at the start of `marks` are fills and strokes that are worth a form
/// together; 0 when Cairo may as well draw them.
std::size_t form_run(std::span<const ink::Mark> marks);

/// Draws such a run. Cairo puts in a picture that is none: its "fax data" are the operators
/// (ISO 32000-1, 8.5), so that it stands in drawing order, under the clip and in the element.
void draw_form(cairo_t* context, std::span<const ink::Mark> run);

/// Makes each stand-in the form XObject that it stands for (ISO 32000-1, 8.10).
void open_forms(QPDF& file);

} // namespace output
