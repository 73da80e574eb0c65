// A calendar file (RFC 5545) of days: practice, the cold test, the next lesson.
#pragma once

#include <chrono>
#include <string>
#include <vector>

namespace output {

/// Whole days without a time, so that no time zone can move them; they do not block the day.
struct DayEvent {
    std::string uid; ///< the same for the same event in every edition of the file
    std::string summary, description;
    std::chrono::year_month_day first;
    int days = 1;  ///< so many days in a row …
    int every = 1; ///< … each, or every second one and so on
};

/// Lines end in CRLF and are folded at 75 octets, never inside a letter. `stamp` is the day the
/// record names: the file holds nothing of the clock. `language` is a BCP 47 tag.
std::string calendar(const std::vector<DayEvent>& events, std::chrono::year_month_day stamp,
                     const std::string& name, const std::string& language);

} // namespace output
