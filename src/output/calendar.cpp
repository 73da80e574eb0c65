#include "output/calendar.hpp"

#include <algorithm>

namespace output {

namespace {

/// RFC 5545, 3.3.11: backslash, semicolon, comma and line end are escaped.
std::string escaped(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (c == '\r') continue;
        if (c == '\n') {
            out += "\\n";
            continue;
        }
        if (c == '\\' || c == ';' || c == ',') out += '\\';
        out += c;
    }
    return out;
}

bool inside_letter(char c) { return (static_cast<unsigned char>(c) & 0xC0) == 0x80; }

/// RFC 5545, 3.1: no line longer than 75 octets; what follows begins with a space, which counts.
void put(std::string& out, const std::string& line) {
    constexpr std::size_t most = 75;
    std::size_t from = 0, room = most;
    while (line.size() - from > room) {
        std::size_t to = from + room;
        while (to > from && inside_letter(line[to]))
            --to;
        out += line.substr(from, to - from) + "\r\n ";
        from = to;
        room = most - 1;
    }
    out += line.substr(from) + "\r\n";
}

std::string digits(int value, std::size_t width) {
    std::string text = std::to_string(value);
    return std::string(width - std::min(width, text.size()), '0') + text;
}

std::string date(std::chrono::year_month_day day) {
    return digits(static_cast<int>(day.year()), 4) +
           digits(static_cast<int>(static_cast<unsigned>(day.month())), 2) +
           digits(static_cast<int>(static_cast<unsigned>(day.day())), 2);
}

void put_event(std::string& out, const DayEvent& event, const std::string& stamp,
               const std::string& language) {
    put(out, "BEGIN:VEVENT");
    put(out, "UID:" + escaped(event.uid));
    put(out, "DTSTAMP:" + stamp);
    put(out, "DTSTART;VALUE=DATE:" + date(event.first));
    if (event.days > 1) {
        std::string rule = "RRULE:FREQ=DAILY;COUNT=" + std::to_string(event.days);
        if (event.every > 1) rule += ";INTERVAL=" + std::to_string(event.every);
        put(out, rule);
    }
    put(out, "SUMMARY;LANGUAGE=" + language + ":" + escaped(event.summary));
    if (!event.description.empty())
        put(out, "DESCRIPTION;LANGUAGE=" + language + ":" + escaped(event.description));
    put(out, "TRANSP:TRANSPARENT");
    put(out, "END:VEVENT");
}

} // namespace

std::string calendar(const std::vector<DayEvent>& events, std::chrono::year_month_day stamp,
                     const std::string& name, const std::string& language) {
    const std::string at = date(stamp) + "T000000Z";
    std::string out;
    put(out, "BEGIN:VCALENDAR");
    put(out, "VERSION:2.0");
    put(out, "PRODID:-//Lessonleaf//Practice//EN");
    put(out, "CALSCALE:GREGORIAN");
    put(out, "METHOD:PUBLISH");
    put(out, "NAME;LANGUAGE=" + language + ":" + escaped(name)); // RFC 7986
    for (const auto& event : events)
        put_event(out, event, at, language);
    put(out, "END:VCALENDAR");
    return out;
}

} // namespace output
