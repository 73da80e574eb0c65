// A book as PDF: real text, embedded subsets, outline, links, structure, metadata.
#pragma once

#include "page/book.hpp"

#include <string>

namespace output {

/// The same book gives the same bytes. Every Words must have been shaped. Throws CannotDraw.
std::string pdf(const page::Book& book);

} // namespace output
