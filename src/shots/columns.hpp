// Which column of a table is what, and in which unit.
#pragma once

#include "record/lesson.hpp"
#include "shots/grid.hpp"

#include <optional>
#include <string>
#include <vector>

namespace shots {

/// One measure's column.
struct Column {
    unit::Measure measure{};
    std::size_t index = 0;      ///< place in the row
    std::optional<double> size; ///< of its unit in SI; nothing while unknown
};

struct Columns {
    std::vector<Column> measures;
    std::optional<std::size_t> number, block, club, set_aside;
    std::size_t width = 0;     ///< cells of the header
    std::size_t first_row = 1; ///< the first row with a shot
    bool known = true;         ///< false when no column is: nothing can be read
};

/// Finds the columns by the record's mapping, then by our own names; takes units from the header, a
/// units row or the record. Faults go to `findings`.
Columns find_columns(const Grid& grid, const record::ShotSource& how, diag::Findings& findings);

/// "2 columns", "1 column".
std::string count_of(std::size_t count, std::string_view noun);

} // namespace shots
