// From record, table and drills to all that one sheet tells. Pure: no file is opened here.
#pragma once

#include "diag/finding.hpp"
#include "drills/clubs.hpp"
#include "page/story.hpp"

#include <memory>
#include <span>
#include <vector>

namespace report {

/// A lesson before this one, with its shots.
struct Earlier {
    const record::Lesson* lesson = nullptr;
    const shots::Table* table = nullptr; ///< none for a lesson without shots
};

/// What a story is made from. All of it must outlive the story.
struct Inputs {
    const record::Lesson& lesson;
    const shots::Table* table = nullptr;
    const std::vector<drills::Drill>& library;
    std::span<const drills::TypicalClub> clubs = {}; ///< the typical bag
    const words::Speaker* speaker = nullptr;         ///< knows a club by its printed name
    std::vector<Earlier> earlier = {};               ///< the lessons before, the latest first
};

/// Measures, poses, chooses. A drill that the library does not have is a finding.
page::Story tell(const Inputs& inputs, diag::Findings& findings);

} // namespace report
