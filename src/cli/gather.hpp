// The lessons of a folder: found, read, told and put in order.
#pragma once

#include "cli/sheet.hpp"

#include <memory>
#include <string>
#include <vector>

namespace cli {

/// One record, read; its sheet when nothing is wrong with it.
struct Gathered {
    fs::path record;
    std::unique_ptr<Read> read;
    std::unique_ptr<Sheet> sheet;
    bool sound() const { return sheet && read->findings.clean(); }
    const std::string& code() const { return read->lesson.student.code; }
};

/// Every record below the folder, in the order of their dates. Only those of `code` get a sheet,
/// all when it is empty; a record too faulty to tell whose it is counts as everyone's.
std::vector<Gathered> gather(const Workshop& workshop, const fs::path& folder,
                             const std::string& code, const text::Typesetter& type);

} // namespace cli
