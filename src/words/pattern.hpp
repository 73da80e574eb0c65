// One sentence with its holes: the syntax of ICU MessageFormat, held as plain pieces.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace words {

struct Branch;

/// A stretch of text, a hole, or a choice between messages.
struct Piece {
    enum class Kind : unsigned char { text, hole, select, plural };
    Kind kind = Kind::text;
    std::string text; ///< the text itself, or the name of the hole
    std::vector<Branch> branches;
};
using Pattern = std::vector<Piece>;

struct Branch {
    std::string selector;        ///< "left", "one", "other"
    std::optional<double> exact; ///< the number of an "=3" selector
    Pattern message;
};

struct PatternFault {
    std::string what, hint;
    std::size_t at = 0; ///< UTF-16 offset in the pattern
};

/// Reads a pattern of plain holes, select and plural. Other argument types are faults, because a
/// number or a date gets its form before it comes to a sentence.
Pattern read_pattern(std::string_view text, std::optional<PatternFault>& fault);

/// Names of all holes, sorted, each once.
std::vector<std::string> holes_of(const Pattern& pattern);

} // namespace words
