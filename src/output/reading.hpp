// What a page says, in the order in which it is read. Internal to output.
#pragma once

#include "ink/mark.hpp"

#include <string>
#include <vector>

namespace output {

/// A structure element: text of its own, then or between that its parts.
struct Element {
    std::string role;        ///< empty for a run of text
    std::string text;        ///< of a run
    std::string alternative; ///< of a Figure
    std::vector<Element> parts;
};

/// The elements of one sheet; what is tagged as nothing or as an artifact is left out.
std::vector<Element> reading_of(const std::vector<ink::Mark>& marks);

/// All text of an element, runs joined by spaces; a figure gives its name and message, or nothing
/// when `figure_name` is empty.
std::string text_of(const Element& element, const std::string& figure_name);

} // namespace output
