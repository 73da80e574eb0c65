// The only place where a date becomes text.
#pragma once

#include "words/catalogue.hpp"

#include <chrono>
#include <string>

namespace words {

using Date = std::chrono::year_month_day;

/// "14 May 2026"; the month is always a word, so that day and month cannot be mistaken.
std::string date_long(Date date, const Speaker& speaker);
/// "14 May", for places that name the year elsewhere.
std::string date_short(Date date, const Speaker& speaker);
/// "2026-05-14" (ISO 8601), for file names and tables.
std::string date_iso(Date date);

} // namespace words
