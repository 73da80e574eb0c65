// Slips that the parser would take for something else and pass over in silence.
#pragma once

#include "diag/finding.hpp"

#include <string>

namespace yaml {

/// Stands for a '#' that belongs to a text, where the parser would begin a comment.
inline constexpr char kept_hash = '\x1A';

struct Combed {
    std::string text;     ///< of the same lines and length, each slip read as it was meant
    bool readable = true; ///< false when a line cannot be read as it was meant
};

/// Reports a '#' that would cut a text short ("ball #2 forward", "accent: #14532d"), a semicolon
/// between the parts of a bracket, and a line indented with other spaces than plain ones.
Combed comb(const diag::Source& source, diag::Findings& findings);

} // namespace yaml
