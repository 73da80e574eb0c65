#include "record/parts.hpp"
#include "record/read_date.hpp"
#include "record/read_quantity.hpp"

#include <charconv>

namespace record {

void take(const yaml::Field& field, std::vector<std::string>& to) {
    for (const yaml::Field& item : field.items())
        if (auto text = item.text()) to.push_back(std::move(*text));
}

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
    if (const auto celsius = field.at("temperature").number(-40, 60)) conditions.celsius = celsius;
    if (const auto hectopascal = field.at("pressure").number(500, 1100))
        conditions.pressure = unit::Pascal{*hectopascal * 100};
    if (const auto wind = field.at("wind")) conditions.wind = read_wind(wind, units);
    take(field.at("same set up"), conditions.same_set_up);
    take(field.at("why not"), conditions.why_not);
}

void read_drills(const yaml::Field& field, std::vector<DrillWish>& drills) {
    for (const yaml::Field& item : field.items()) {
        DrillWish& wish = drills.emplace_back();
        if (item.is_text()) {
            wish.id = {item.text().value_or(""), item.span()};
            continue;
        }
        item.only({"id", "why", "dose", "pass", "cue", "link"});
        const yaml::Field id = item.required("id", "H1");
        wish.id = {id.text().value_or(""), id.span()};
        take(item.at("why"), wish.why);
        take(item.at("dose"), wish.dose);
        take(item.at("pass"), wish.pass);
        take(item.at("cue"), wish.cue);
        read_link(item.at("link"), wish.link);
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
void read_count(const yaml::Field& field, Returned& returned) {
    const auto text = field.text();
    if (!text) return;
    int right = 0, of = 0;
    const char* const end = text->data() + text->size();
    const auto first = std::from_chars(text->data(), end, right);
    const std::string_view rest(first.ptr, static_cast<std::size_t>(end - first.ptr));
    const bool turned = first.ec == std::errc() && rest.starts_with(" of ");
    const auto second = turned ? std::from_chars(first.ptr + 4, end, of) : first;
    if (!turned || second.ec != std::errc() || second.ptr != end || right < 0 || of < 1 ||
        right > of)
        return field.must("be a count", "for example 'right first: 8 of 10'");
    returned.right_first = right;
    returned.right_of = of;
}

} // namespace

void read_returned(const yaml::Field& field, std::optional<Returned>& returned) {
    if (!field) return;
    field.only({"drill", "days done", "right first", "planned", "words"});
    returned.emplace();
    take(field.at("drill"), returned->drill);
    returned->days_done = field.at("days done").whole(0, 366);
    read_count(field.at("right first"), *returned);
    take(field.at("planned"), returned->planned);
    take(field.at("words"), returned->words);
}

void read_history(const yaml::Field& field, std::vector<HistoryLine>& history) {
    for (const yaml::Field& item : field.items()) {
        HistoryLine& line = history.emplace_back();
        if (item.is_text()) {
            take(item, line.text);
            continue;
        }
        item.only({"date", "text"});
        line.date = read_date(item.at("date"));
        take(item.required("text", "aim named, hold changed"), line.text);
    }
}

} // namespace record
