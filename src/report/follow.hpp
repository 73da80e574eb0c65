// From single lessons to a course: what was kept from one to the next, every cold test of an aim,
// the drills passed. Pure.
#pragma once

#include "page/course.hpp"

#include <vector>

namespace report {

/// `stories` of one student in any order, at least one; all must outlive the course. A cold block
/// tests the change of the lesson before it, and only when it was hit with that lesson's club.
/// `library` knows drills that no lesson here has set.
page::Course follow(std::vector<const page::Story*> stories,
                    const std::vector<drills::Drill>& library);

} // namespace report
