// Checks a file beside the lesson records: the house, its people, a coach's drills, a term.
#pragma once

#include "cli/workshop.hpp"

#include <optional>
#include <string>

namespace cli {

/// Reads house.yaml, people.yaml, drills.yaml (known by their names) or a term file (known by its
/// first key), tells what is wrong, with all that `check FOLDER` would find in it, and gives the
/// exit code. Nothing when the file is none of them.
std::optional<int> check_other(const Workshop& workshop, const std::string& path, bool strict);

/// A line that begins with the key 'term', which no lesson record has.
bool is_term(const std::string& text);
/// A register or the days of a term without that key.
bool nearly_term(const std::string& text);

/// What is wrong with the entries of people.yaml: each entry's own findings, and lofts of bags.
void check_entries(const Workshop& workshop, const people::People& people,
                   diag::Findings& findings);

} // namespace cli
