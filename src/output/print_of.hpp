// What tells one sheet of paper from another, whatever its page numbers.
#pragma once

#include "page/book.hpp"

#include <string>
#include <vector>

namespace output {

/// A print for each two pages: 16 hexadecimal digits of everything that is drawn on them, to a
/// tenth of a point. The same marks give the same print everywhere.
std::vector<std::string> prints_of(const page::Book& book);

/// The note that the PDF was made with; empty when the bytes are no PDF or
/// there is none.
std::string note_in(const std::string& pdf);

} // namespace output
