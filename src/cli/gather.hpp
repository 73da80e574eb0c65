// Lessons with what can be drawn of them.
#pragma once

#include "cli/lessons_below.hpp"
#include "cli/sheet.hpp"

namespace cli {

/// One record, read; its sheet when nothing is wrong with it.
struct Gathered {
    std::unique_ptr<Read> read;
    std::unique_ptr<Sheet> sheet;
    bool sound() const { return sheet && read->findings.clean(); }
    const std::string& code() const { return read->lesson.student.code; }
};

std::vector<Gathered> gather(const Workshop& workshop, std::vector<std::unique_ptr<Read>> lessons,
                             const text::Typesetter& type);

} // namespace cli
