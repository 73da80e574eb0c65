// The first leaf of a binder: whose it is and what is new in it, and where everything is.
#pragma once

#include "page/block.hpp"
#include "page/course.hpp"

#include <string>
#include <vector>

namespace page {

/// A line of the contents. `place` is where the part starts.
struct ContentsLine {
    std::string number, date, what, revision, place;
    std::size_t first = 0, last = 0; ///< pages
    bool part = false;               ///< a part of the binder, set strong; else a lesson or a drill
};

/// Name, coach, goal and aim, the hold as it is now; `news` stands in a box at the foot.
Section binder_title(const figure::Easel& easel, const Course& course,
                     const std::vector<std::string>& news);

/// One page, with rows to fill in by hand down to its foot; more pages when the lines need them.
Section binder_contents(const figure::Easel& easel, const std::vector<ContentsLine>& lines);

/// "face angle with the seven iron"
std::string aim_name(const figure::Easel& easel, unit::Measure measure, const std::string& club);

} // namespace page
