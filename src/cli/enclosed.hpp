// What a sheet takes along so that it can be made again from itself.
#pragma once

#include "cli/workshop.hpp"
#include "output/pdf.hpp"

namespace cli {

/// Record (with the date that its folder's name gave), shot table, the coach's drills, house.yaml,
/// logo and signature, and a people.yaml of this student alone: what is printed from it, no address
/// and no family name. Photographs and earlier lessons stay out.
std::vector<output::Attachment> enclosed(const Read& read);

} // namespace cli
