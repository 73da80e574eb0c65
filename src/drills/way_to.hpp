// What to write where a drill is named that the library does not have.
#pragma once

#include "drills/drill.hpp"

namespace drills {

/// The hint: the code of a drill whose printed name was written, the codes of its family, the
/// nearest id, else where drills come from.
std::string way_to(const std::string& written, const std::vector<Drill>& library);

} // namespace drills
