#include "record/read_date.hpp"

#include <array>
#include <charconv>

namespace record {

namespace {

constexpr std::array<std::string_view, 12> month_names{
    "January", "February", "March",     "April",   "May",      "June",
    "July",    "August",   "September", "October", "November", "December"};

std::optional<int> whole(std::string_view text) {
    int value = 0;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (fault != std::errc() || end != text.data() + text.size() || value < 0) return {};
    return value;
}

/// The text cut at '-', '/', '.', ',' and spaces.
std::vector<std::string_view> parts_of(std::string_view text) {
    std::vector<std::string_view> parts;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of("-/., "), text.size());
        if (end > 0) parts.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return parts;
}

Date make(int year, int month, int day) {
    return Date{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                std::chrono::day(static_cast<unsigned>(day))};
}

/// The month whose English name begins with `word` (three letters at least), or 0.
int month_named(std::string_view word) {
    if (word.size() < 3) return 0;
    for (std::size_t i = 0; i < month_names.size(); ++i)
        if (yaml::plain_word(month_names[i]).starts_with(yaml::plain_word(word)))
            return static_cast<int>(i) + 1;
    return 0;
}

std::string words(Date date) {
    return std::to_string(static_cast<unsigned>(date.day())) + " " +
           std::string(month_names[static_cast<unsigned>(date.month()) - 1]);
}

/// "write 2026-05-14", when the text can only mean one or two days.
std::string way_out(std::string_view text) {
    std::string fallback = "write year-month-day, for example 2026-05-14";
    std::vector<std::string_view> parts = parts_of(text);
    if (parts.size() != 3) return fallback;
    for (const std::size_t at : {0U, 1U})
        if (const int month = month_named(parts[at]); month > 0) {
            const auto day = whole(parts[1 - at]), year = whole(parts[2]);
            if (!day || !year || *year < 100 || !make(*year, month, *day).ok()) return fallback;
            return "write " + iso(make(*year, month, *day));
        }
    const auto first = whole(parts[0]), second = whole(parts[1]), third = whole(parts[2]);
    if (!first || !second || !third) return fallback;
    if (*first > 99 && make(*first, *second, *third).ok())
        return "write " + iso(make(*first, *second, *third));
    const int year = *third < 100 ? 2000 + *third : *third;
    const Date day_first = make(year, *second, *first), month_first = make(year, *first, *second);
    if (day_first.ok() && month_first.ok() && day_first != month_first)
        return "write " + iso(day_first) + " for " + words(day_first) + ", or " + iso(month_first) +
               " for " + words(month_first);
    if (day_first.ok()) return "write " + iso(day_first);
    return month_first.ok() ? "write " + iso(month_first) : fallback;
}

/// Year, month and day of a text that has the form of a date, whether or not there is such a day.
std::optional<Date> shape_of(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return {};
    const auto year = whole(text.substr(0, 4)), month = whole(text.substr(5, 2)),
               day = whole(text.substr(8, 2));
    if (!year || !month || !day) return {};
    return make(*year, *month, *day);
}

} // namespace

std::optional<Date> date_of(std::string_view text) {
    const std::optional<Date> date = shape_of(text);
    return date && date->ok() ? date : std::nullopt;
}

std::string iso(Date date) {
    const auto two = [](unsigned n) {
        return std::string(n < 10 ? "0" : "").append(std::to_string(n));
    };
    std::string year = std::to_string(static_cast<int>(date.year()));
    if (year.size() < 4) year.insert(0, 4 - year.size(), '0');
    return year + "-" + two(static_cast<unsigned>(date.month())) + "-" +
           two(static_cast<unsigned>(date.day()));
}

std::optional<Date> read_date(const yaml::Field& field) {
    const std::optional<std::string> text = field.text();
    if (!text) return {};
    const std::optional<Date> shape = shape_of(*text);
    if (!shape) {
        field.must("be a date written year-month-day", way_out(*text));
        return {};
    }
    if (shape->ok()) return shape;
    const bool month = shape->month().ok();
    const auto last =
        std::chrono::year_month_day_last(shape->year(), shape->month() / std::chrono::last);
    field.must("be a day of the calendar",
               month ? std::string(month_names[static_cast<unsigned>(shape->month()) - 1]) + " " +
                           std::to_string(static_cast<int>(shape->year())) + " has " +
                           std::to_string(static_cast<unsigned>(last.day())) + " days"
                     : "months go from 01 to 12; the order is year-month-day");
    return {};
}

} // namespace record
