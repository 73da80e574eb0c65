#include "words/date.hpp"

#include <stdexcept>

namespace words {

namespace {

void expect_valid(Date date) {
    if (!date.ok()) throw std::logic_error("a date on a page must be a day of the calendar");
}

Holes holes_of(Date date, const Speaker& speaker) {
    expect_valid(date);
    const auto month = std::to_string(static_cast<unsigned>(date.month()));
    return {{"day", std::to_string(static_cast<unsigned>(date.day()))},
            {"month", speaker.say("date.month." + month)},
            {"year", std::to_string(static_cast<int>(date.year()))}};
}

/// At least `width` digits.
std::string padded(int value, std::size_t width) {
    auto digits = std::to_string(value);
    if (digits.size() < width) digits.insert(0, width - digits.size(), '0');
    return digits;
}

} // namespace

std::string date_long(Date date, const Speaker& speaker) {
    return speaker.say("date.long", holes_of(date, speaker));
}

std::string date_short(Date date, const Speaker& speaker) {
    return speaker.say("date.short", holes_of(date, speaker));
}

std::string date_iso(Date date) {
    expect_valid(date);
    return padded(static_cast<int>(date.year()), 4) + '-' +
           padded(static_cast<int>(static_cast<unsigned>(date.month())), 2) + '-' +
           padded(static_cast<int>(static_cast<unsigned>(date.day())), 2);
}

} // namespace words
