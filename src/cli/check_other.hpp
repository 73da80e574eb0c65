// Checks a file beside the lesson records: the house, its people, a coach's drills, a term.
#pragma once

#include "cli/workshop.hpp"

#include <optional>
#include <string>

namespace cli {

/// Reads house.yaml, people.yaml, drills.yaml (known by their names) or a term file (known by its
/// first key), tells what is wrong and gives the exit code. Nothing when the file is none of them.
std::optional<int> check_other(const std::string& path, bool strict);

} // namespace cli
