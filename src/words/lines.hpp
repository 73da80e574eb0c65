// The lines `key = sentence` of a wording file.
#pragma once

#include "diag/finding.hpp"

#include <string>
#include <vector>

namespace words {

struct Line {
    std::string key, text; ///< the text's continuation lines are joined by one space
    std::uint32_t line = 0;

    struct Stretch {
        std::size_t at;             ///< UTF-16 offset in `text` where it starts
        std::uint32_t line, column; ///< where it stands in the file
    };
    std::vector<Stretch> stretches; ///< one for each line that adds to the text

    /// The place of that UTF-16 offset.
    diag::Span place(const diag::Source& source, std::size_t offset) const;
};

/// Lines that are neither blank nor a comment. Lines without '=' or with an odd key are errors.
std::vector<Line> read_lines(const diag::Source& source, diag::Findings& findings);

} // namespace words
