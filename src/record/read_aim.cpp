#include "record/parts.hpp"
#include "record/read_quantity.hpp"

namespace record {

namespace {

/// What counts as worth having when the coach names no size: one degree, else nothing is assumed.
std::optional<double> usual_worth(unit::Measure measure) {
    if (unit::row(measure).kind == unit::Kind::angle) return 1.0;
    return {};
}

std::string worth_example(unit::Measure measure) {
    switch (unit::row(measure).kind) {
    case unit::Kind::angle:
        return "1";
    case unit::Kind::speed:
        return "2 mph";
    case unit::Kind::length:
        return "5 yd";
    case unit::Kind::spin:
        return "500";
    case unit::Kind::small_length:
        return "4";
    }
    return "1";
}

/// What is more than the whole spread of a golfer; common practice, no source.
double largest_worth(unit::Measure measure) {
    if (measure == unit::Measure::axis) return 25;
    switch (unit::row(measure).kind) {
    case unit::Kind::angle:
    case unit::Kind::speed: // m/s
        return 10;
    case unit::Kind::length:
        return 60; // metres
    case unit::Kind::spin:
        return 4000;
    case unit::Kind::small_length:
        return 40;
    }
    return 10;
}

void read_worth(const yaml::Field& field, unit::Units units, Aim& aim) {
    const unit::Measure measure = aim.measure.value;
    const auto usual =
        aim.worth_having > 0 ? std::optional(aim.worth_having) : usual_worth(measure);
    const yaml::Field worth =
        usual ? field.at("worth having") : field.required("worth having", worth_example(measure));
    aim.worth_having = usual.value_or(0);
    const auto size = read_quantity(worth, unit::row(measure).kind, units);
    if (!size) return;
    if (*size > largest_worth(measure))
        worth.warning("a 'worth having' of " + std::string(worth.written()) +
                          " is larger than the whole spread of most golfers",
                      "it is the smallest change that would matter, for example " +
                          worth_example(measure) + ": look at the decimal point");
    if (*size > 0)
        aim.worth_having = *size;
    else
        worth.must("be more than 0",
                   "write the smallest change that would matter to you, for example " +
                       worth_example(measure));
}

} // namespace

std::vector<std::string_view> measure_keys(std::initializer_list<std::string_view> more) {
    std::vector<std::string_view> keys;
    for (const unit::MeasureRow& row : unit::measures)
        keys.push_back(row.key);
    keys.insert(keys.end(), more);
    return keys;
}

void read_units(const yaml::Field& field, unit::Units& units) {
    field.only({"distance", "speed"});
    const yaml::Field distance = field.at("distance"), speed = field.at("speed");
    if (distance.text()) {
        if (const auto named = unit::distance_named(yaml::plain_word(distance.written())))
            units.distance = *named;
        else
            distance.must("be metres or yards", "write distance: yards");
    }
    if (!speed.text()) return;
    if (const auto named = unit::speed_named(yaml::plain_word(speed.written())))
        units.speed = *named;
    else
        speed.must("be mph, km/h or m/s", "write speed: mph");
}

void read_wish(const yaml::Field& field, unit::Units units, Aim& aim) {
    const bool ranged = aim.least != aim.most; // by the usual aim
    const bool sided = unit::row(aim.measure.value).sided;
    const yaml::Field want =
        ranged ? field.at("want") : field.required("want", sided ? "2 L to 2 R" : "24 to 28");
    if (const auto range = read_range(want, aim.measure.value, units)) {
        aim.least = range->least;
        aim.most = range->most;
    }
    read_worth(field, units, aim);
}

void read_aim(const yaml::Field& field, unit::Units units,
              const std::map<unit::Measure, Aim>& usual, std::optional<Aim>& aim) {
    if (!field) return;
    const bool word = field.is_text() && !usual.empty();
    if (!word) field.only({"measure", "want", "worth having", "named before"});
    const yaml::Field measure = word ? field : field.required("measure", "face");
    const auto index = measure.one_of(measure_keys());
    if (!index) return;
    const auto named = static_cast<unit::Measure>(*index);
    const auto known = usual.find(named);
    aim = known != usual.end() ? known->second : Aim{};
    aim->measure = {named, measure.span()};
    if (word && known == usual.end())
        return field.error("house.yaml has no usual aim for " + diag::quote(field.written()),
                           "add it there under 'aims', or write aim: {measure: " +
                               std::string(field.written()) + ", want: ...}");
    if (!word) read_wish(field, units, *aim);
    take(field.at("named before"), aim->named_before);
}

} // namespace record
