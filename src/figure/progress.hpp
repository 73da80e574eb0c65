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
        axis; ///< fixed ends, so that sheets lie over each other
};

struct ProgressInput {
    std::vector<ProgressMeasure> measures;
    std::string message; ///< alternative text
};

inline constexpr std::size_t tests_for_progress = 3; ///< cold tests; fewer are too early

/// Small multiples side by side that share one column of dates; as many rows of them as the width
/// asks for. The space between dates follows the calendar as far as the names of days allow.
ink::Drawing progress(const Easel& easel, const ProgressInput& input, double width, double height);

} // namespace figure
