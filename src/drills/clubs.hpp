// A typical bag, for students whose own clubs are not recorded.
#pragma once

#include "diag/finding.hpp"
#include "unit/quantity.hpp"

#include <string>
#include <vector>

namespace drills {

struct TypicalClub {
    std::string key; ///< "seven-iron"; its printed name is the sentence club.seven-iron
    unit::Degrees loft, lie;
    unit::Kilograms head; ///< mass of the head
    diag::Span span;
};

/// Reads a list of clubs, from the least loft to the most. Faults go to `findings`.
std::vector<TypicalClub> read_clubs(const diag::Source& source, diag::Findings& findings);

} // namespace drills
