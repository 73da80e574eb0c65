// Everything that a sheet computed, as rows: what, of which block, how much, in which unit, from
// where.
#pragma once

#include "page/story.hpp"
#include "words/catalogue.hpp"

#include <optional>
#include <string>
#include <vector>

namespace report {

/// `what` is "measure: statistic" with the keys of unit::measures, `block` is before, after, cold
/// or change. Values stand in the student's display units; right of the target is positive. `lower`
/// and `upper` are the range that `what` or `origin` names.
struct Number {
    std::string what, block;
    double value = 0;
    std::string unit;   ///< "yd", "°"; empty for counts and parts
    std::string origin; ///< measured, derived, estimated from launch, model …
    std::optional<double> lower, upper;
    std::string text; ///< of a row that is a word: the verdict's key, the source of a share
};

/// Every evidence measure, then every ball result, in the order of the pages.
std::vector<Number> numbers(const page::Story& story, const words::Speaker& speaker);

} // namespace report
