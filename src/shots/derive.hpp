// What follows from a table's own columns.
#pragma once

#include "diag/finding.hpp"
#include "shots/table.hpp"

namespace shots {

/// Fills face to path (face minus path) and curve (offline minus carry times the tangent of the
/// start) where the table has no such column; `measured` stays false for them.
void derive(Table& table);

/// Warns of shots whose every number repeats another shot, and of a number given twice in a block.
void check_twins(const Table& table, const diag::Source& source, diag::Findings& findings);

} // namespace shots
