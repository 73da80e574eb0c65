// Columns and blocks that have changed places: every number is possible, together they are not.
#pragma once

#include "shots/read_table.hpp"

namespace shots {

/// Which columns have been doubted: the speeds, carry and offline. They are passed over then, so
/// that one cause is told once.
struct Doubted {
    bool speeds = false, landing = false;
};

/// Warns of carry and offline, or of club and ball speed, in each other's place.
Doubted check_mixed_up(const Table& table, const diag::Source& source, diag::Findings& findings,
                       std::string_view club);

/// Warns of balls that start far outside face and path, from the first one on; where nearly all do
/// so it asks about the column, and whether that is the launch.
void check_start_range(const Table& table, const diag::Source& source, diag::Findings& findings);

/// Warns of balls that start and curve to one side and land on the other.
void check_landing_side(const Table& table, const diag::Source& source, diag::Findings& findings);

/// Warns of a carry that is far too short for the ball's speed.
void check_short_carry(const Table& table, const diag::Source& source, diag::Findings& findings);

/// Warns when all shots after the change are numbered before those before it.
void check_order(const Table& table, const diag::Source& source, diag::Findings& findings);

} // namespace shots
