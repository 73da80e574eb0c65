// The lessons below a folder.
#pragma once

#include "cli/workshop.hpp"

#include <vector>

namespace cli {

struct Below {
    Reads lessons;     ///< by date, then by path; each has its findings
    bool whole = true; ///< false when a folder could not be read
};

/// Every lesson.yaml below `folder`, or below `folders` (none twice), read. What could not be read
/// or is left out for its name is told on standard error.
Below lessons_below(const Workshop& workshop, const fs::path& folder);
Below lessons_below(const Workshop& workshop, const std::vector<std::string>& folders);

using Lessons = std::vector<const Read*>;

/// One student's; a record whose code cannot be read belongs to nobody.
Lessons lessons_of(const Below& below, std::string_view code);

/// Files below `folder` with one of those endings (small letters), sorted.
std::vector<fs::path> files_below(const fs::path& folder,
                                  std::initializer_list<std::string_view> endings);

/// YAML and text files below `folder` that read like a lesson record and are not called
/// lesson.yaml, sorted.
std::vector<fs::path> strays_below(const fs::path& folder);

} // namespace cli
