// What a sheet is called.
#pragma once

#include "record/lesson.hpp"

#include <string>

namespace cli {

/// "RU-04-2026-05-14.pdf": code and date, letters and digits only, so that no name leaves a folder.
/// `ending` comes instead of ".pdf".
std::string file_name(const record::Lesson& lesson, const char* ending = ".pdf");

} // namespace cli
