// Clubs whose name or loft is likely a slip.
#pragma once

#include "cli/workshop.hpp"

namespace cli {

/// Warns when the club of the lesson is in no bag and none of the usual ones, in the language of
/// the sheet or in English: its loft and the flights are then left out. Without shots that is only
/// told when a name close to it is known.
void doubt_club(const Workshop& workshop, const record::Lesson& lesson, diag::Findings& findings);

/// Warns when all shots that are compared were hit with one club, and the record names another.
void doubt_table_club(const Workshop& workshop, const record::Lesson& lesson,
                      const shots::Table& table, const diag::Source& source,
                      diag::Findings& findings);

/// Warns of a loft far from the usual one of the club of that name.
void doubt_lofts(const Workshop& workshop, const std::vector<record::Club>& bag,
                 const std::string& language, diag::Findings& findings);

} // namespace cli
