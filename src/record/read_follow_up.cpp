#include "record/parts.hpp"
#include "record/read_date.hpp"
#include "record/read_quantity.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>

namespace record {

void take(const yaml::Field& field, std::vector<std::string>& to) {
    for (const yaml::Field& item : field.items())
        if (auto text = item.text()) to.push_back(std::move(*text));
}

namespace {

/// A number of degrees Celsius; other degrees are turned round in the hint.
std::optional<double> read_celsius(const yaml::Field& field) {
    const std::string_view word = field.written();
    double value = 0;
    const auto [end, fault] = std::from_chars(word.data(), word.data() + word.size(), value);
    std::string unit = yaml::plain_word(word.substr(static_cast<std::size_t>(end - word.data())));
    std::erase(unit, ' ');
    const bool fahrenheit =
        unit == "f" || unit == "°f" || (unit.empty() && value > 60 && value < 130);
    const bool celsius_named = unit == "c" || unit == "°c";
    if (fault != std::errc() || !(celsius_named || fahrenheit)) return field.number(-40, 60);
    const double celsius = fahrenheit ? (value - 32) / 1.8 : value;
    field.must("be a number of degrees Celsius, from -40 to 60",
               "write temperature: " + std::to_string(std::lround(celsius)) +
                   (fahrenheit && unit.empty() ? " when these are degrees Fahrenheit" : ""));
    return std::nullopt;
}

} // namespace

void read_conditions(const yaml::Field& field, unit::Units units, Conditions& conditions) {
    if (field.is_text()) return take(field, conditions.text);
    field.only({"text", "height", "temperature", "pressure", "wind", "same set up", "why not"});
    take(field.at("text"), conditions.text);
    const yaml::Field height = field.at("height");
    if (const auto metres = read_quantity(height, unit::Kind::length, units)) {
        if (*metres > -500 && *metres < 5000)
            conditions.height = unit::Metres{*metres};
        else
            height.must("be a height above the sea, from -500 m to 5000 m",
                        "for example height: 120 m");
    }
    if (const auto celsius = read_celsius(field.at("temperature"))) conditions.celsius = celsius;
    if (const auto hectopascal = field.at("pressure").number(500, 1100))
        conditions.pressure = unit::Pascal{*hectopascal * 100};
    if (const auto wind = field.at("wind")) conditions.wind = read_wind(wind, units);
    take(field.at("same set up"), conditions.same_set_up);
    take(field.at("why not"), conditions.why_not);
}

namespace {

/// The words between commas, semicolons and spaces.
std::vector<std::string_view> parts_of(std::string_view text) {
    std::vector<std::string_view> parts;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of(",; "), text.size());
        if (end > 0) parts.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return parts;
}

/// "H1; H4" as "H1, H4".
std::string with_commas(std::string_view text) {
    std::string out;
    for (const std::string_view part : parts_of(text))
        out += (out.empty() ? "" : ", ") + std::string(part);
    return out;
}

/// "H1, H4", "H1; H4" and "H1 H4".
bool names_several(std::string_view text) {
    if (text.find_first_of(",;") != std::string_view::npos) return true;
    const auto parts = parts_of(text);
    return parts.size() > 1 && std::ranges::all_of(parts, [](std::string_view part) {
               return part.find_first_of("0123456789") != std::string_view::npos;
           });
}

} // namespace

void read_drills(const yaml::Field& field, std::vector<DrillWish>& drills) {
    for (const yaml::Field& item : field.items()) {
        if (item.is_text() && names_several(item.written())) {
            item.must("be the id of a drill",
                      "write several in square brackets, with commas: " +
                          field.called().substr(1, field.called().size() - 2) + ": [" +
                          with_commas(item.written()) + "]");
            continue;
        }
        DrillWish& wish = drills.emplace_back();
        if (item.is_text()) {
            wish.id = {item.text().value_or(""), item.span()};
            continue;
        }
        item.only({"id", "why", "dose", "pass", "cue", "link", "tries", "stage"});
        const yaml::Field id = item.required("id", "H1");
        wish.id = {id.text().value_or(""), id.span()};
        take(item.at("why"), wish.why);
        take(item.at("dose"), wish.dose);
        take(item.at("pass"), wish.pass);
        take(item.at("cue"), wish.cue);
        read_link(item.at("link"), wish.link);
        wish.tries = item.at("tries").whole(1, 50);
        wish.stage = choose<unit::Stage>(item.at("stage"), unit::stage_words);
    }
}

void read_plan(const yaml::Field& field, Plan& plan) {
    field.only({"when", "where", "obstacle", "instead"});
    take(field.at("when"), plan.when);
    take(field.at("where"), plan.where);
    take(field.at("obstacle"), plan.obstacle);
    take(field.at("instead"), plan.instead);
}

void read_next(const yaml::Field& field, Lesson& lesson) {
    if (!field) return;
    if (!field.is_text()) field.only({"date", "cold test"});
    const yaml::Field date = field.is_text() ? field : field.at("date");
    lesson.next = read_date(date);
    lesson.next_span = date.span();
    const yaml::Field cold_test = field.at("cold test");
    lesson.cold_test = read_date(cold_test);
    lesson.cold_test_span = cold_test.span();
}

namespace {

/// "8 of 10".
std::optional<Tally> read_tally(const yaml::Field& field, const std::string& key) {
    const auto text = field.text();
    if (!text) return std::nullopt;
    Tally tally;
    const char* const end = text->data() + text->size();
    const auto first = std::from_chars(text->data(), end, tally.right);
    const std::string_view rest(first.ptr, static_cast<std::size_t>(end - first.ptr));
    const bool turned = first.ec == std::errc() && rest.starts_with(" of ");
    const auto second = turned ? std::from_chars(first.ptr + 4, end, tally.of) : first;
    if (turned && second.ec == std::errc() && second.ptr == end && tally.right >= 0 &&
        tally.of >= 1 && tally.right <= tally.of)
        return tally;
    const bool whole = turned && second.ec == std::errc() && second.ptr == end;
    if (whole && tally.of >= 1 && tally.right > tally.of)
        field.error("in " + field.called() + " " + std::to_string(tally.right) +
                        " is more than the " + std::to_string(tally.of) + " tries",
                    "the tries come second: " + key + ": " + std::to_string(tally.of) + " of " +
                        std::to_string(tally.right) + "?");
    else
        field.must("be a count", "for example '" + key + ": 8 of 10'");
    return std::nullopt;
}

void read_one_returned(const yaml::Field& field, Returned& back) {
    field.only({"drill", "days done", "right first", "right", "called right", "cold", "passed",
                "stage", "lessons", "planned", "words"});
    const yaml::Field drill = field.at("drill");
    back.drill = {drill.text().value_or(""), drill.span()};
    back.days_done = field.at("days done").whole(0, 366);
    back.days_span = field.at("days done").span();
    back.right = read_tally(field.at("right first"), "right first");
    back.right_span = field.at(field.at("right first") ? "right first" : "right").span();
    if (field.at("right first") && field.at("right"))
        field.at("right").error("'right' and 'right first' are both there",
                                "they are the same count: leave one of them");
    else if (field.at("right"))
        back.right = read_tally(field.at("right"), "right");
    back.called = read_tally(field.at("called right"), "called right");
    back.cold = read_tally(field.at("cold"), "cold");
    take(field.at("passed"), back.passed);
    back.stage = choose<unit::Stage>(field.at("stage"), unit::stage_words);
    back.lessons = field.at("lessons").whole(1, 99);
    take(field.at("planned"), back.planned);
    take(field.at("words"), back.words);
}

} // namespace

void read_returned(const yaml::Field& field, std::vector<Returned>& returned) {
    if (!field) return;
    for (const yaml::Field& item : field.items()) {
        if (field.is_list()) item.required("drill", "H1"); // which of the two it was
        Returned& back = returned.emplace_back();
        back.span = field.is_list() ? item.span() : field.key_span();
        read_one_returned(item, back);
    }
    if (returned.size() > 2)
        field.error("'returned' tells of more than two drills",
                    "a sheet has at most two; leave the others out");
}

void read_last_lesson(const yaml::Field& field, diag::Located<std::string>& last) {
    if (!field) return;
    last = {field.text().value_or(""), field.span()};
}

void read_log(const yaml::Field& field, int& days) {
    const auto text = field.text();
    if (!text) return;
    const std::string word = yaml::plain_word(*text);
    if (word == "14" || word == "14 days")
        days = 14;
    else if (word == "28" || word == "28 days")
        days = 28;
    else
        field.must("be 14 days or 28 days", "write log: 28 days for a second log");
}

void read_pain(const yaml::Field& field, bool& pain) {
    if (!field) return;
    const std::string word = yaml::plain_word(field.written());
    if (word == "yes" || word == "no" || word == "true" || word == "false")
        return take(field, pain);
    field.error("'pain' takes only yes or no",
                "health is not kept here: 'pain: yes' only stops the program from proposing a "
                "drill, and is printed nowhere");
}

void read_history(const yaml::Field& field, Date today, std::vector<HistoryLine>& history) {
    for (const yaml::Field& item : field.items()) {
        HistoryLine& line = history.emplace_back();
        if (item.is_text()) {
            take(item, line.text);
            continue;
        }
        item.only({"date", "text"});
        line.date = read_date(item.at("date"));
        if (line.date && today.ok() && *line.date > today)
            item.at("date").warning("this line of 'history' is after the lesson of " + iso(today),
                                    "'history' tells of earlier lessons: correct one of the two "
                                    "dates");
        take(item.required("text", "aim named, hold changed"), line.text);
    }
}

} // namespace record
