#include "report/numbers.hpp"

#include "page/verdict.hpp"
#include "report/numbers_rows.hpp"

#include <array>

namespace report {

double Rows::shown(unit::Measure measure, double value) const {
    return value / unit::size_of_unit(unit::row(measure).kind, units_);
}

Number& Rows::with_unit(std::string what, std::string block, double value, std::string unit,
                        std::string origin) {
    return rows_.emplace_back(Number{
        std::move(what), std::move(block), value, std::move(unit), std::move(origin), {}, {}, {}});
}

Number& Rows::add(std::string what, std::string block, unit::Measure measure, double value,
                  std::string origin) {
    return with_unit(std::move(what), std::move(block), shown(measure, value),
                     std::string(unit::symbol(unit::row(measure).kind, units_)), std::move(origin));
}

Number& Rows::plain(std::string what, std::string block, double value, std::string origin) {
    return with_unit(std::move(what), std::move(block), value, {}, std::move(origin));
}

void Rows::range(unit::Measure measure, double lower, double upper) {
    rows_.back().lower = shown(measure, lower);
    rows_.back().upper = shown(measure, upper);
}

namespace {

void add_sample(Rows& rows, const page::Evidence& e, const std::string& block,
                const measure::Sample& s) {
    if (s.count == 0 && s.set_aside == 0) return;
    const std::string name = std::string(unit::row(e.measure).key) + ": ",
                      origin = e.estimated ? "derived" : "measured";
    rows.plain(name + "count", block, static_cast<double>(s.count), "counted");
    rows.plain(name + "set aside", block, static_cast<double>(s.set_aside), "counted");
    if (s.count == 0) return;
    rows.add(name + "median", block, e.measure, s.median, origin);
    rows.range(e.measure, s.lower, s.upper);
    rows.add(name + "lower quartile", block, e.measure, s.lower, origin);
    rows.add(name + "upper quartile", block, e.measure, s.upper, origin);
    rows.add(name + "mean", block, e.measure, s.mean, origin);
    if (s.count > 1) {
        rows.add(name + "standard deviation", block, e.measure, s.sd, origin);
        rows.add(name + "spread", block, e.measure, s.spread, origin);
    }
    rows.add(name + "least", block, e.measure, s.least, origin);
    rows.add(name + "most", block, e.measure, s.most, origin);
    if (s.drift) rows.add(name + "drift", block, e.measure, *s.drift, origin);
}

void add_shift(Rows& rows, const page::Evidence& e) {
    const auto& shift = e.change.shift;
    const std::string name = std::string(unit::row(e.measure).key) + ": shift";
    rows.add(name, "change", e.measure, shift.value, "median of all pair differences");
    const auto level = [&](const char* words, const std::optional<measure::Interval>& interval) {
        if (!interval) return;
        rows.add(name + words, "change", e.measure, shift.value,
                 interval->exact ? "exact rank interval" : "rank interval, normal approximation");
        rows.range(e.measure, interval->lower, interval->upper);
    };
    level(" 80 %", shift.at80);
    level(" 90 %", shift.at90);
    level(" 95 %", shift.at95);
}

} // namespace

void add_evidence(Rows& rows, const page::Evidence& e) {
    add_sample(rows, e, "before", e.change.before);
    add_sample(rows, e, "after", e.change.after);
    if (e.cold_sample) add_sample(rows, e, "cold", *e.cold_sample);
    const bool both = e.change.before.count > 0 && e.change.after.count > 0;
    if (both) add_shift(rows, e);
    const std::string name = std::string(unit::row(e.measure).key) + ": ";
    if (e.is_aim && both) {
        rows.plain(name + "inside the wanted range", "before",
                   static_cast<double>(e.change.inside_before), "counted");
        rows.plain(name + "inside the wanted range", "after",
                   static_cast<double>(e.change.inside_after), "counted");
        rows.plain(name + "verdict", "change", static_cast<double>(e.change.verdict),
                   "printed rule")
            .text = page::verdict_key(e.change.verdict);
    }
    if (!e.retention) return;
    constexpr std::array<const char*, 5> verdicts{"kept", "partly kept", "not kept yet",
                                                  "cannot tell yet", "first look"};
    const auto verdict = static_cast<std::size_t>(e.retention->kept);
    rows.plain(name + "kept", "cold", static_cast<double>(verdict), "printed rule").text =
        verdicts[verdict];
    if (!e.retention->range) return;
    Number& kept = rows.plain(name + "part kept", "cold", e.retention->part, "resampled, 80 %");
    kept.lower = e.retention->range->lower;
    kept.upper = e.retention->range->upper;
}

std::vector<Number> numbers(const page::Story& story, const words::Speaker& speaker) {
    Rows rows(speaker.voice().units);
    for (const auto& e : story.evidence)
        add_evidence(rows, e);
    if (story.ball) add_ball(rows, *story.ball, speaker);
    add_practice(rows, story);
    return rows.take();
}

} // namespace report
