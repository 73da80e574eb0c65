// The files that a lesson is made from.
#pragma once

#include "cli/workshop.hpp"

namespace cli {

/// Record, table, drills, house, people, pictures and the lessons before it: no run that reads them
/// writes over them.
std::vector<std::string> names_of(const Read& read);

/// The same of several lessons.
template <class Lessons>
std::vector<std::string> names_of_all(const Lessons& lessons) {
    std::vector<std::string> out;
    for (const auto& read : lessons)
        for (auto& name : names_of(*read))
            out.push_back(std::move(name));
    return out;
}

} // namespace cli
