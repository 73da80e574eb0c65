// All records below a folder, and what can only be seen across them.
#pragma once

#include "cli/workshop.hpp"
#include "page/book.hpp"
#include "text/typesetter.hpp"

namespace cli {

/// Reads and lays out one record; nothing is written. Not readable: the read says so. `with_notes`
/// adds what the printed rules say about the drills. The pages are shown to `look` when there is
/// one.
std::unique_ptr<Read> check_record(const Workshop& workshop, const fs::path& record,
                                   const text::Typesetter& type, bool with_notes = false,
                                   void (*look)(const page::Book&) = nullptr);

/// Tells every fault below the folder and what was looked at; the exit code.
int check_folder(const Workshop& workshop, const fs::path& folder, const text::Typesetter& type,
                 bool strict);

} // namespace cli
