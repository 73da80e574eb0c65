// A file of nothing but the marks of a house.
#pragma once

#include "diag/finding.hpp"
#include "record/lesson.hpp"

namespace record {

/// Logo, signature, accent and contact lines; all may be left out.
Marks read_marks(const diag::Source& source, diag::Findings& findings);

} // namespace record
