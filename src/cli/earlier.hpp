// The lessons before this one, by the 'last lesson' of each record.
#pragma once

#include "cli/workshop.hpp"

namespace cli {

/// Follows 'last lesson' from record to record into `read.earlier`. What is wrong with the link is
/// told on the line that names it; a lesson further back that cannot be read ends the row.
void read_earlier(const Workshop& workshop, Read& read, const fs::path& record);

/// A lesson that looked at no hold still aims at the one of the lesson before.
void keep_target(Read& read);

} // namespace cli
