// The parts of a drill page that are written on: log, path to colour, cold test, initials.
#pragma once

#include "drills/drill.hpp"
#include "page/story.hpp"

namespace page {

inline constexpr double least_log_cell = 9 * figure::mm; ///< points, both ways
inline constexpr int log_days = 14;
inline constexpr int log_rows = 6;
inline constexpr int path_circles = 10;

/// Days `first` to `last` side by side: date, stage, done, right first time, called it right, how
/// strange. Cells are at least `least_log_cell` wide.
ink::Drawing log_grid(const figure::Easel& easel, int first, int last, double width,
                      double row_height);

/// What the stages mean, in three columns.
ink::Drawing log_stages(const figure::Easel& easel, const drills::Drill& drill, double width);

/// A winding path of circles to colour: no numbers, no meaning in the colours.
ink::Drawing log_path(const figure::Easel& easel, double width, double height);

/// Ten boxes for the cold test, its date, and the initials.
ink::Drawing log_cold(const figure::Easel& easel, const record::Lesson& lesson,
                      const drills::Drill& drill, double width);

} // namespace page
