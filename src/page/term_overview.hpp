// Pages of a term that are no student's: the coach's overview, the group page, the proof page.
#pragma once

#include "page/block.hpp"
#include "page/course.hpp"
#include "record/term.hpp"

#include <optional>
#include <string>
#include <vector>

namespace page {

/// A row of the overview, already in words.
struct OverviewRow {
    std::string name; ///< "Ruth · RU-04"
    std::string sessions, cold, stage, kept, gap, next;
};

/// Something that is not there, and whose it is.
struct MissingLine {
    std::string whose, what;
};

/// Who needs what next? In the order given; nobody is ranked.
Section term_overview(const figure::Easel& easel, const std::vector<OverviewRow>& rows,
                      const std::vector<MissingLine>& missing);

/// What did we work on? Topics by week over all lessons, and the latest middle shot of everybody
/// with the commonest aim, without names. Adults alone are in the picture, and only when at least
/// five of them are.
inline constexpr std::size_t students_for_group = 5;
Section group_page(const figure::Easel& easel, const record::Term& term,
                   const std::vector<const Course*>& courses);

/// One student's part of the pile.
struct PileRow {
    std::string code;
    std::size_t first = 0, last = 0; ///< pages of the file for the printer
};

/// Greys, rulers and hole marks to try the printer with; on its back the pile in register order.
std::vector<Section> proof_pages(const figure::Easel& easel, const std::vector<PileRow>& pile);

} // namespace page
