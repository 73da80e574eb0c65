// Pages as text: what is where, to 0.1 point, for tests and for eyes.
#pragma once

#include "page/book.hpp"

#include <string>

namespace output {

/// One line a mark, tags indent what they hold. The same marks give the same text everywhere.
std::string trace(const std::vector<ink::Mark>& marks);

/// The book's facts, then each page with its marks, then the bookmarks.
std::string trace(const page::Book& book);

} // namespace output
