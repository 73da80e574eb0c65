// Where a lesson starts: record over person over house over program.
#pragma once

#include "people/house.hpp"
#include "people/people.hpp"

namespace people {

/// The start of a lesson of the student whom a record calls by `code`; `house` and `people` may be
/// null. Reports a code that people.yaml does not know (an error when the record says no more than
/// that, else a warning), and hands on the findings of that person.
record::Start start_of(const House* house, const People* people,
                       const diag::Located<std::string>& code, bool bare, diag::Findings& findings);

/// Adds findings that were made elsewhere.
void hand_on(const std::vector<diag::Finding>& from, diag::Findings& to);

} // namespace people
