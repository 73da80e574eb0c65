// A book as plain text, in reading order: for screen readers, for reading aloud, for a letter.
#pragma once

#include "page/book.hpp"

#include <string>

namespace output {

/// The few words of the text itself, in the reader's language.
struct TwinWords {
    std::string picture; ///< before what a figure says: "Picture"
};

inline constexpr std::size_t twin_width = 72; ///< characters a line

/// Headings underlined, paragraphs whole, a table row as one sentence with the names of its
/// columns, figures as their message; page furniture is left out. UTF-8, wrapped at 72 characters.
std::string plain_text(const page::Book& book, const TwinWords& words);

} // namespace output
