// CSV text to a shot table: separators, units, signs and blocks as the record declares them.
#pragma once

#include "diag/finding.hpp"
#include "record/lesson.hpp"
#include "shots/table.hpp"

namespace shots {

/// Reads a shot table. `how` maps columns and declares units, signs and blocks; `hand` turns
/// open-positive into right-positive. Nothing about signs or units is guessed: a missing
/// declaration is an error that shows the line to add to the record. Faults go to `findings`.
Table read_table(const diag::Source& source, const record::ShotSource& how, unit::Hand hand,
                 diag::Findings& findings);

/// Sets shots aside by the record's rules, block by block.
void set_aside(Table& table, const std::vector<record::SetAsideRule>& rules,
               diag::Findings& findings);

/// What cannot be, or hardly: a seven iron at 160 mph, a ball faster than any strike makes it,
/// angles out of range, a start direction on the far side of face and path (a flipped sign), carry
/// longer than that ball flies. Warnings with the place of the first such cell and the count.
/// `club` is the record's, for shots that name none.
void check_plausible(const Table& table, const diag::Source& source, diag::Findings& findings,
                     std::string_view club = {});

/// Warns when the table cannot show what the lesson aimed at: no column for the aim's measure, or
/// no shots before or after. The sheet then gives no verdict.
void check_aim(const Table& table, const record::Aim& aim, diag::Findings& findings);

} // namespace shots
