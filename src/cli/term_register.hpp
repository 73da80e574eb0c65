// A term against the lessons that lie below its folder.
#pragma once

#include "cli/workshop.hpp"
#include "record/term.hpp"

namespace cli {

/// The folder of the lessons, as the term file names it.
fs::path lessons_folder(const record::Term& term, const fs::path& file);

/// Reports a folder that is not there.
void check_folder_of(const record::Term& term, const fs::path& file, diag::Findings& findings);

bool in_term(const record::Term& term, const record::Lesson& lesson);

/// Warns of codes in the register that nobody has, and of students with lessons in the term who
/// are not in the register.
void check_register(const record::Term& term, const diag::Source& source,
                    const std::vector<const record::Lesson*>& lessons, const Academy& academy,
                    diag::Findings& findings);

} // namespace cli
