// The header of a table: names with their units taken off.
#pragma once

#include "shots/grid.hpp"
#include "unit/measure.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace shots {

struct Heading {
    std::string written; ///< as in the table
    std::string name;    ///< small letters, '_' and '-' as spaces, without the unit
    std::string unit;    ///< "yd" of "carry (yd)" or "carry yd"; empty when none is named
    bool taken = false;
};

/// The first row's cells.
std::vector<Heading> read_header(const Grid& grid);

/// `text` as header names are compared: small letters, one space between words, no unit in
/// brackets.
std::string plain_name(std::string_view text);

/// The measure of one of our own column names, small differences in spelling allowed.
std::optional<unit::Measure> own_measure(std::string_view name);

/// Our own names for the other columns: "number", "block", "club", "set aside"; else the name
/// itself.
std::string_view own_role(std::string_view name);

/// All names that need no mapping, the usual ones first.
const std::vector<std::string_view>& own_names();

} // namespace shots
