// The files that a lesson is made from.
#pragma once

#include "cli/workshop.hpp"

namespace cli {

/// Record, table, drills, house, people, pictures and the lessons before it: no run that reads them
/// writes over them.
void add_names(const Read& read, std::vector<std::string>& to);
std::vector<std::string> names_of(const Read& read);

} // namespace cli
