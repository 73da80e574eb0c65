// The calendar file as RFC 5545 asks for it; Python reads it in tests/cli.
#include "output/calendar.hpp"

#include <catch2/catch.hpp>

#include <sstream>

using namespace std::chrono_literals;

namespace {

constexpr auto day = 2026y / std::chrono::May / 31;

std::string made(output::DayEvent event) {
    event.uid = "RU-04-2026-05-31-H1@lessonleaf.invalid";
    event.first = day;
    return output::calendar({event}, day, "Practice: Lay and close", "en-GB");
}

std::string unfolded(std::string text) {
    for (auto at = text.find("\r\n "); at != std::string::npos; at = text.find("\r\n ", at))
        text.erase(at, 3);
    return text;
}

} // namespace

TEST_CASE("no line of a calendar is longer than 75 octets, and none is cut inside a letter") {
    std::string much;
    for (int i = 0; i < 60; ++i)
        much += "Grüß den Schläger – ‘ein’ Gedanke; zwei, drei. ";
    const auto text = made({.summary = much, .description = much + "\nStop on pain."});
    std::size_t from = 0, lines = 0;
    while (from < text.size()) {
        const auto end = text.find("\r\n", from);
        REQUIRE(end != std::string::npos); // every line ends in CRLF
        const auto line = text.substr(from, end - from);
        CHECK(line.size() <= 75);
        CHECK(line.find('\n') == std::string::npos);
        if (!line.empty()) CHECK((static_cast<unsigned char>(line.front()) & 0xC0) != 0x80);
        if (line.size() > 1) CHECK((static_cast<unsigned char>(line[1]) & 0xC0) != 0x80);
        from = end + 2;
        ++lines;
    }
    CHECK(lines > 50);
    const auto whole = unfolded(text);
    CHECK(whole.find("Gedanke\\; zwei\\, drei.") != std::string::npos);
    CHECK(whole.find("\\nStop on pain.") != std::string::npos);
}

TEST_CASE("a row of days is one event with a rule, a single day has none") {
    const auto row = made({.summary = "x", .days = 13});
    CHECK(row.find("DTSTART;VALUE=DATE:20260531\r\n") != std::string::npos);
    CHECK(row.find("RRULE:FREQ=DAILY;COUNT=13\r\n") != std::string::npos);
    CHECK(made({.summary = "x", .days = 6, .every = 2}).find("COUNT=6;INTERVAL=2") !=
          std::string::npos);
    const auto one = made({.summary = "x"});
    CHECK(one.find("RRULE") == std::string::npos);
    CHECK(one.find("DTSTAMP:20260531T000000Z\r\n") != std::string::npos);
    CHECK(one == made({.summary = "x"}));
}
