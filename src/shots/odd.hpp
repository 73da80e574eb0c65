// Shots that break one rule: the first is shown, all are counted.
#pragma once

#include "diag/finding.hpp"
#include "shots/table.hpp"

#include <string>

namespace shots {

struct Odd {
    const Shot* first = nullptr;
    std::size_t count = 0;
    void add(const Shot& shot) {
        if (!first) first = &shot;
        ++count;
    }
};

/// Where that measure of the shot is written; the shot's line when the table does not write it.
diag::Span place_of(const Shot& shot, unit::Measure measure, const diag::Source& source);

/// A warning at the first of them: "WHAT in 12 of 24 shots".
void warn(const Table& table, const Odd& odd, diag::Span place, std::string what, std::string hint,
          diag::Findings& findings);

} // namespace shots
