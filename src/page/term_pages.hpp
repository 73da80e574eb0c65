// A student's pages of a term report: four sides that compare with nobody.
#pragma once

#include "page/block.hpp"
#include "page/course.hpp"
#include "record/term.hpp"

#include <optional>
#include <string>
#include <vector>

namespace page {

/// One student's term.
struct Termly {
    const record::Term* term = nullptr;
    const record::TermStudent* entry = nullptr; ///< what the coach wrote; none when nothing
    const Course* course = nullptr;             ///< the lessons of this term
    std::string contact;                        ///< whom a guardian can ask
    std::optional<record::Date> kept_until;     ///< when the records are due for deletion
};

/// What can I do now? Three lines, the ladder, what comes next, attendance, the coach's comment.
Section term_ladder(const figure::Easel& easel, const Termly& student);

/// What did the cold tests show? The pictures of the binder, at the same size.
std::vector<Section> term_cold(const figure::Easel& easel, const Termly& student);

/// What did I practise? As the logs came back.
Section term_practice(const figure::Easel& easel, const Termly& student);

/// How can I help? For whoever lives with a junior.
Section guardian_note(const figure::Easel& easel, const Termly& student);

} // namespace page
