// From record, table and drills to all that one sheet tells. Pure: no file is opened here.
#pragma once

#include "diag/finding.hpp"
#include "page/story.hpp"

#include <memory>
#include <vector>

namespace report {

/// What a story is made from. All of it must outlive the story.
struct Inputs {
    const record::Lesson& lesson;
    const shots::Table* table = nullptr;
    const std::vector<drills::Drill>& library;
};

/// Measures, poses, chooses. A drill that the library does not have is a finding.
page::Story tell(const Inputs& inputs, diag::Findings& findings);

/// The measures a page lists, in the order of the house, the aim left out: at most `most`.
std::vector<const page::Evidence*> listed(const page::Story& story, std::size_t most);

} // namespace report
