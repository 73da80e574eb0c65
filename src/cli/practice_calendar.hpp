// The days of practice of one sheet as a calendar file.
#pragma once

#include "cli/sheet.hpp"

namespace cli {

/// Every drill on each day from the day after the lesson until the cold test (every second day for
/// juniors), at most as many days as the log has, then the cold test and the next lesson. The
/// student's name is not in it.
std::string practice_calendar(const Sheet& sheet);

} // namespace cli
