// To whom a lesson's mail goes, and what it says.
#pragma once

#include "cli/sheet.hpp"
#include "cli/workshop.hpp"
#include "output/mail.hpp"
#include "people/people.hpp"

namespace cli {

/// The person whose mail this is. Null, with an error that says why, when code, name and address do
/// not belong together or there is no address; a warning when somebody else has the same address.
const people::Person* addressed(Read& read);

/// The mail with its words in the lesson's language.
output::Mail mail_of(const people::Person& person, const Sheet& sheet, const std::string& file_name,
                     std::size_t pages, const std::string& pdf);

} // namespace cli
