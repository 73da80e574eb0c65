// templates/style/ to a style, telling every fault with its place.
#pragma once

#include "diag/finding.hpp"
#include "theme/style.hpp"

namespace theme {

// What a file leaves out stays as `style` has it.
void read_letters(const diag::Source& source, Style& style, diag::Findings& findings);
void read_papers(const diag::Source& source, Style& style, diag::Findings& findings);
void read_inks(const diag::Source& source, Style& style, diag::Findings& findings);
/// The whole plan: the drill and the cautions stay in it, no page is there twice.
void read_pages(const diag::Source& source, Style& style, diag::Findings& findings);

} // namespace theme
