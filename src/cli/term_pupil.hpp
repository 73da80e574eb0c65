// One student of a term: what was read, and what can be drawn of it.
#pragma once

#include "cli/batch.hpp"
#include "cli/gather.hpp"
#include "cli/term_files.hpp"
#include "page/course.hpp"
#include "page/term_pages.hpp"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace cli {

/// Stays where it is: `termly` points into it.
struct Pupil {
    std::string code; ///< empty: lessons of nobody knows whom
    const record::TermStudent* entry = nullptr;
    bool listed = true;                 ///< gets a report
    Reads reads;                        ///< of this term, by date; empty once gathered
    std::vector<Gathered> lessons;      ///< without a fault
    std::vector<std::string> faulty;    ///< "2026-03-05/lesson.yaml"
    std::optional<page::Course> course; ///< when there is a lesson without a fault
    page::Termly termly;
    Receiver receiver;
    std::unique_ptr<words::Speaker> words; ///< the coach's language, this student's hand

    bool printable() const { return listed && course && faulty.empty(); }
};

using Pupils = std::vector<std::unique_ptr<Pupil>>;

/// The register first, then the lessons of the term to their students; without a register in the
/// order of the codes. Records without a code come last, as one of an empty code.
Pupils enrol(const record::Term& term, Reads lessons);

/// Draws what is needed of every lesson, and says into `telling` what was found.
void gather_lessons(Pupil& pupil, const Workshop& workshop, const text::Typesetter& type,
                    bool strict, Outcome& telling);

/// Course, words and receiver of a pupil with a lesson.
void follow(Pupil& pupil, const record::Term& term, const words::Catalogue& wording);

} // namespace cli
