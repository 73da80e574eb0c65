#include "words/side.hpp"

#include "words/number.hpp"

#include <cmath>

namespace words {

namespace {

using unit::Kind;
using unit::Measure;

double shown(Measure measure, double value, const Speaker& speaker) {
    const auto units = speaker.voice().units;
    return value / unit::size_of_unit(unit::row(measure).kind, units);
}

bool directed(Measure measure) {
    return unit::row(measure).sided || measure == Measure::attack || measure == Measure::strike;
}

std::string dashed(std::string_view key) {
    std::string out(key);
    for (auto& c : out)
        if (c == ' ') c = '-';
    return out;
}

/// "°", "yd" … as the language writes it, with the space that belongs before it.
std::string unit_after(Measure measure, const Speaker& speaker) {
    const auto kind = unit::row(measure).kind;
    const auto symbol = unit::symbol(kind, speaker.voice().units);
    if (kind == Kind::angle) return std::string(symbol);
    std::string key = "unit.";
    for (const char c : symbol)
        key += c == '/' ? '-' : c;
    return std::string(no_break_space) + speaker.say(key);
}

/// right, left or none, by what the reader will see.
std::string_view way(Measure measure, double value, const Speaker& speaker) {
    const int places = decimals(measure, speaker.voice().units);
    const double seen = rounded(shown(measure, value, speaker), places);
    if (seen == 0) return "none";
    const bool angle = unit::row(measure).kind == Kind::angle;
    if (angle && measure != Measure::axis && std::abs(seen) <= square_within_degrees)
        return seen > 0 ? "near-right" : "near-left";
    return seen > 0 ? "right" : "left";
}

std::string phrase(std::string_view form, Measure measure, double value, const Speaker& speaker) {
    auto key = std::string(form) + dashed(unit::row(measure).key) + '.';
    key += way(measure, value, speaker);
    return speaker.say(key, {{"x", quantity(measure, std::abs(value), speaker)}});
}

} // namespace

int decimals(Measure measure, unit::Units units) {
    switch (unit::row(measure).kind) {
    case Kind::angle:
        return 1;
    case Kind::speed:
        return units.speed == unit::Speed::kilometres_per_hour ? 0 : 1;
    case Kind::length:
    case Kind::spin:
    case Kind::small_length:
        return 0;
    }
    return 0;
}

std::string quantity(Measure measure, double value, const Speaker& speaker) {
    const int places = decimals(measure, speaker.voice().units);
    return fixed(shown(measure, value, speaker), places, speaker.language()) +
           unit_after(measure, speaker);
}

std::string range(Measure measure, double least, double most, const Speaker& speaker) {
    const int places = decimals(measure, speaker.voice().units);
    return speaker.say(
        "unit.range", {{"least", fixed(shown(measure, least, speaker), places, speaker.language())},
                       {"most", quantity(measure, most, speaker)}});
}

std::string side(Measure measure, double value, const Speaker& speaker) {
    if (!directed(measure)) return quantity(measure, value, speaker);
    return phrase("side.", measure, value, speaker);
}

std::string side_short(Measure measure, double value, const Speaker& speaker) {
    if (!directed(measure)) return quantity(measure, value, speaker);
    return phrase("short.", measure, value, speaker);
}

std::string side_range(Measure measure, double least, double most, const Speaker& speaker) {
    if (!directed(measure)) return range(measure, least, most, speaker);
    const auto end = [&](double value) {
        const auto where = way(measure, value, speaker);
        const auto sign = where.ends_with("right")  ? "right"
                          : where.ends_with("left") ? "left"
                                                    : "none";
        const auto kind = measure == Measure::attack   ? "height."
                          : measure == Measure::strike ? "strike."
                                                       : "target.";
        return speaker.say(std::string("range.") + kind + sign,
                           {{"x", quantity(measure, std::abs(value), speaker)}});
    };
    return speaker.say("range.from-to", {{"from", end(least)}, {"to", end(most)}});
}

std::string difference(Measure measure, double delta, const Speaker& speaker) {
    const int places = decimals(measure, speaker.voice().units);
    const double seen = rounded(shown(measure, delta, speaker), places);
    const auto* way = seen > 0 ? "plus" : seen < 0 ? "minus" : "none";
    const auto* kind = unit::row(measure).sided     ? "sided."
                       : measure == Measure::attack ? "height."
                       : measure == Measure::strike ? "strike."
                                                    : "size.";
    return speaker.say(std::string("difference.") + kind + way,
                       {{"x", quantity(measure, std::abs(delta), speaker)}});
}

} // namespace words
