// The pictures that a record names, read and made ready for paper.
#pragma once

#include "cli/workshop.hpp"
#include "page/pictures.hpp"

namespace cli {

/// Photographs, logo and signature of `read`. What cannot be printed is an error at its place; what
/// is too small to be printed at full width a warning.
page::Pictures pictures_of(Read& read);

/// The files that these pictures lie in, whether they are there or not.
std::vector<fs::path> picture_files(const record::Lesson& lesson);
/// Those of them that are the house's: logo and signature.
std::vector<fs::path> mark_files(const record::Lesson& lesson);

} // namespace cli
