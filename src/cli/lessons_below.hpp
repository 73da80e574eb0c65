// The lessons below a folder.
#pragma once

#include "cli/workshop.hpp"

#include <vector>

namespace cli {

/// One student's lessons below `folder`, by date, then by path. Each has its findings; a record
/// whose code cannot be read belongs to nobody.
std::vector<std::unique_ptr<Read>> lessons_of(const Workshop& workshop, const fs::path& folder,
                                              std::string_view code);

/// YAML and text files below `folder` that read like a lesson record and are not called
/// lesson.yaml, sorted.
std::vector<fs::path> strays_below(const fs::path& folder);

} // namespace cli
