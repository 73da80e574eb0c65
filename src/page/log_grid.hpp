// The parts of a drill page that are written on: log, path to colour, cold test, initials.
#pragma once

#include "drills/drill.hpp"
#include "page/story.hpp"

namespace page {

inline constexpr double least_log_cell = 9 * figure::mm; ///< points, both ways
inline constexpr int log_days = 14;
inline constexpr int path_circles = 10;

/// What is counted of that drill: its own count, or the coach's number of tries. A coach's own dose
/// without that number leaves the denominators open.
struct LogCount {
    drills::Count count;
    bool open = false;
};
LogCount log_count(const ChosenDrill& chosen);

/// How many rows its log has.
int log_rows(const LogCount& count);

/// Boxes of its cold test: as many as its tries, at most ten.
int cold_boxes(const LogCount& count);

/// Days `first` to `last` side by side: date, stage, done, what is counted, what is called, how
/// strange. Cells are at least `least_log_cell` wide.
ink::Drawing log_grid(const figure::Easel& easel, const LogCount& count, int first, int last,
                      double width, double row_height);

/// What the stages mean, in three columns; the one where the student stands says so.
ink::Drawing log_stages(const figure::Easel& easel, const ChosenDrill& chosen, double width);

/// A winding path of circles to colour: no numbers, no meaning in the colours.
ink::Drawing log_path(const figure::Easel& easel, double width, double height);

/// Boxes for the cold test, its date, the answer of the last one, and the initials.
ink::Drawing log_cold(const figure::Easel& easel, const Story& story, const ChosenDrill& chosen,
                      double width);

} // namespace page
