// What every page bears around its content: whose it is, which lesson, which page of how many.
#pragma once

#include "page/flow.hpp"
#include "page/story.hpp"

namespace page {

/// The words around the content of every page of a document.
struct Running {
    std::string whose;       ///< head, at the binding
    std::string which;       ///< head, at the outer edge
    std::string foot;        ///< at the binding
    bool counted = true;     ///< "page 3 of 8" at the outer edge of the foot
    std::string strong_foot; ///< in the middle of the foot, bold: "For the coach only."
};

/// "Ruth · RU-04", or the one of the two that there is.
std::string whose(const figure::Easel& easel, const record::Student& student);
/// "Tom Harling · tom@…".
std::string coach_line(const record::Coach& coach);

/// Running head, foot and, where the style asks for them, punch marks. The easel must outlive it.
Furniture furniture(const figure::Easel& easel, Running running);
Furniture furniture(const figure::Easel& easel, const record::Lesson& lesson);

/// The sheet's number in the binder it lies in, above the running head at the outer edge; it
/// becomes the page's label.
void put_folio(Sheet& sheet, const figure::Easel& easel, std::size_t number);

} // namespace page
