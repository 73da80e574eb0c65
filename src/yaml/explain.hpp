// What a person did when the parser gave up: the likely slip, line by line.
#pragma once

#include "diag/finding.hpp"
#include "yaml/grow.hpp"

namespace yaml {

/// A value in double quotes, as it would have to be written; cut when it is long.
std::string in_quotes(std::string_view text);

/// Reports why reading `text` (the source's own, or as `comb` left it) stopped. For a syntax fault
/// the lines are searched for the usual slips (tabs, a colon without a space, a colon inside a
/// text, an open quote), all of them in one run; without any, the parser's place is reported with
/// what can be done there. When colons inside texts are all that is wrong, comes back with a text
/// of the same length that can be read on, so that one run tells the other faults too; else empty.
std::string explain(const diag::Source& source, const std::string& text, const Stop& stop,
                    diag::Findings& findings);

} // namespace yaml
