// What tells one sheet of paper from another, whatever its page numbers.
#pragma once

#include "page/book.hpp"

#include <optional>
#include <string>
#include <vector>

namespace output {

/// A print for each two pages: 16 hexadecimal digits of everything that is drawn on them, to a
/// tenth of a point. The same marks give the same print everywhere.
std::vector<std::string> prints_of(const page::Book& book);

/// The note that the PDF was made with; empty when the bytes are no PDF or
/// there is none.
std::string note_in(const std::string& pdf);

/// The program that a PDF says it was made by; nothing when it cannot be read or does not say.
std::optional<std::string> producer_of(const std::string& pdf);

} // namespace output
