// Labels beside what they name, never over one another.
#pragma once

#include "figure/easel.hpp"

#include <optional>
#include <span>
#include <vector>

namespace figure {

/// Starts of pieces along a line from `from` to `to` so that none overlaps: each as near to its
/// wish as the others allow (least squares, by pooling neighbours). `wishes` ascend. Pieces that do
/// not fit run over `to`.
std::vector<double> spread_apart(std::span<const double> wishes, std::span<const double> sizes,
                                 double gap, double from, double to);

/// Drawings under one another, as wide as the widest.
ink::Drawing stacked(const std::vector<ink::Drawing>& parts);

/// Words that stand in a column and point at what they name.
struct Callout {
    ink::Point at;
    ink::Drawing words;
    double clear = 0; ///< the leader ends this far from `at`
};

/// Puts callouts into `column`, in the order of what they name from top to bottom, each with a thin
/// leader from the column's edge nearer to it.
void put_callouts(ink::Drawing& drawing, std::vector<Callout> callouts, const ink::Rect& column,
                  double first_line, ink::Colour colour);

/// Height that callouts take under one another.
double height_of(const std::vector<Callout>& callouts);

/// The top left corner nearest to `wish` at which a box of that size lies in `room` and touches
/// nothing that is taken.
std::optional<ink::Point> free_place(ink::Size size, ink::Point wish, const ink::Rect& room,
                                     std::span<const ink::Rect> taken);

/// Small boxes along a line, for `free_place`.
void take_line(std::vector<ink::Rect>& taken, std::span<const ink::Point> line, double half);

/// "right", "left", "near-right", "near-left" or "none": which way a value points, by what the
/// reader will see. "near" only for angles within half a degree.
std::string_view way(const Easel& easel, unit::Measure measure, double value);

} // namespace figure
