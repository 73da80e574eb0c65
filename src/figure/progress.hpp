// Lessons and cold tests over the dates of a binder: time runs down the page, so that right stays
// right of the target.
#pragma once

#include "figure/easel.hpp"
#include "figure/symbol.hpp"
#include "words/date.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace figure {

/// One block of one day: SI or degrees, right positive.
struct ProgressBlock {
    words::Date date{};
    Symbol symbol = Symbol::cold;
    double median = 0, lower = 0, upper = 0; ///< middle shot and middle half
};

struct ProgressMeasure {
    unit::Measure measure = unit::Measure::face;
    std::vector<ProgressBlock> blocks; ///< in any order
    std::optional<std::pair<double, double>> wanted;
    std::optional<std::pair<double, double>>
        axis;         ///< fixed ends, so that sheets lie over each other
    double share = 1; ///< of the width, beside the other measures
};

struct ProgressInput {
    std::vector<ProgressMeasure> measures;
    std::string message; ///< alternative text
    /// Places for days, all of one height, so that sheets lie over each other; what no day has
    /// taken yet is left to be filled in by hand. 0: as many as there are days.
    std::size_t places = 0;
};

/// Ends of an axis that stay the same all year: zero in the middle for right and left, else as wide
/// for everybody and placed by the student's first block. SI or degrees.
std::pair<double, double> year_axis(unit::Measure measure, double first_median,
                                    const unit::Units& units);

inline constexpr std::size_t tests_for_progress = 3; ///< cold tests; fewer are too early

/// Small multiples side by side that share one column of dates; as many rows of them as the width
/// asks for. Without `places` the space between dates follows the calendar as far as the names of
/// days allow; with them the weeks between two days are written. A block beyond the axis stands at
/// its end with an arrow.
ink::Drawing progress(const Easel& easel, const ProgressInput& input, double width, double height);

} // namespace figure
