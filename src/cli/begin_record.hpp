// A new lesson's record and table, from what is known of the student.
#pragma once

#include "cli/workshop.hpp"

namespace cli {

struct Begun {
    const people::House* house = nullptr;
    const people::Person* person = nullptr; ///< null when only earlier lessons know the student
    const Read* last = nullptr;             ///< the last lesson before that day
    std::string code;
    record::Date date;
    std::size_t lessons = 0; ///< before this one
    fs::path folder;         ///< of the new record
};

/// A commented record: what the last lesson left is written again, what is to be said is empty.
std::string record_for(const Begun& begun);

/// "shots.csv", or the usual name of the house.
std::string table_name(const Begun& begun);
/// The header of an empty table in the house's columns.
std::string table_for(const Begun& begun);

/// The lines of a record that belong to a key at its left edge, comments and all; empty when the
/// key is not written there.
std::string lines_of(const diag::Source& record, std::string_view key);

} // namespace cli
