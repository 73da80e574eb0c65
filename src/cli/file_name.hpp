// What sheets, binders and reports are called.
#pragma once

#include "record/lesson.hpp"

#include <string>

namespace cli {

/// "RU-04-2026-05-14.pdf": code and date, letters and digits only, so that no name leaves a folder.
/// `ending` comes instead of ".pdf".
std::string file_name(const record::Lesson& lesson, const char* ending = ".pdf");

/// Letters and digits of a name, everything else a hyphen; `otherwise` when there are none.
std::string file_stem(const std::string& name, const char* otherwise);

} // namespace cli
