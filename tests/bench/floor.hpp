// What Cairo itself costs: the marks of a finished book drawn in the plainest way.
#pragma once

#include "page/book.hpp"

#include <string>

namespace bench {

/// Pages with the same paths, pictures and glyphs as `book`'s, shaped beforehand: no structure, no
/// outline, no links, no metadata, no second pass, Cairo's own tolerance and compression.
std::string floor(const page::Book& book);

} // namespace bench
