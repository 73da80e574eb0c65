// Metadata as XMP (ISO 16684-1). Internal to output.
#pragma once

#include "page/book.hpp"

#include <string>

namespace output {

inline constexpr const char* producer = "Lessonleaf";

/// Title, author, subject, language, day and producer; no path and no clock.
std::string xmp(const page::Book& book);

/// `text` with the characters that XML reserves written as entities; controls are left out.
std::string xml_escaped(std::string_view text);

} // namespace output
