// The papers of a term: a student's pages, the coach's overview, the printer's pile.
#pragma once

#include "page/flow.hpp"
#include "page/term_overview.hpp"
#include "page/term_pages.hpp"

#include <string>
#include <vector>

namespace report {

/// Four sides or more, an even number: ladder, cold tests, practice, and for a junior the note for
/// the family.
page::Flowed student_report(const figure::Easel& easel, const page::Termly& student);

/// One student of the overview, with the words of that student's own hand.
struct OverviewEntry {
    const page::Termly* student = nullptr;
    const words::Speaker* words = nullptr; ///< the coach's language, the student's hand and units
};

/// Coach-only, marked so on every page; in the order of the alphabet. `library` names the drills in
/// the coach's language; what is not in it keeps the student's name for it.
page::Flowed overview_report(const figure::Easel& easel, const record::Term& term,
                             const std::vector<OverviewEntry>& students,
                             const std::vector<page::MissingLine>& missing,
                             const std::vector<drills::Drill>& library);

/// The group's page, names nobody.
page::Flowed group_report(const figure::Easel& easel, const record::Term& term,
                          const std::vector<const page::Course*>& courses);

/// The printer's first sheet.
page::Flowed proof_report(const figure::Easel& easel, const record::Term& term,
                          const std::vector<page::PileRow>& pile);

/// What a student's term lacks, in words: no cold test, no log, no marks.
std::vector<std::string> missing_of(const words::Speaker& words, const page::Termly& student);

} // namespace report
