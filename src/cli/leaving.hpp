// How a finished sheet leaves the program: as PDF or as text, locked, with its sources.
#pragma once

#include "cli/sheet.hpp"
#include "output/seal.hpp"

#include <CLI/CLI.hpp>

namespace cli {

/// What the command line says about it.
struct Leaving {
    std::string as; ///< "pdf" or "text"; empty: as the target's name ends
    bool attach = false;
    std::string password_file;
    std::string password; ///< of that file

    bool is_text(const std::string& target) const;
    /// What a sheet was made from includes whether its sources are in it.
    output::Digest marked(output::Digest inputs) const;
};

/// Refuses a file whose ending promises what is not written, such as .docx, unless --as says what
/// it is to be. One that ends like a record or a table is refused even then.
bool known_ending(const Leaving& leaving, const std::string& target);

/// Refuses what only a PDF can be: locked, or with files in it.
bool fits_text(const Leaving& leaving);

/// Declares --as, --attach and --password-file.
void add_leaving(CLI::App& app, Leaving& leaving);

/// Reads the password file; false (and a word on standard error) when that cannot be used.
bool ready(Leaving& leaving);

/// The file's bytes; `inputs` as output::pdf wants them. Throws output::CannotDraw.
std::string bytes_of(const Leaving& leaving, const Sheet& sheet, const Read& read,
                     const page::Book& book, const output::Digest& inputs, bool as_text);

} // namespace cli
