#include "record/read_quantity.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <string>
#include <vector>

namespace record {

namespace {

enum class Side : std::uint8_t { none, minus, plus };

/// One end of a range, still in the unit it was written in.
struct End {
    double value = 0;
    Side side = Side::none;
    std::optional<double> unit;
    bool ok = false;
    std::string_view stranger; ///< a word that means nothing here
};

std::vector<std::string_view> words_of(std::string_view text) {
    std::vector<std::string_view> words;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of(" \t\n"), text.size());
        if (end > 0) words.push_back(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return words;
}

Side side_named(std::string_view word, unit::Measure measure) {
    const std::string plain = yaml::plain_word(word);
    if (unit::row(measure).sided) {
        if (plain == "l" || plain == "left") return Side::minus;
        if (plain == "r" || plain == "right") return Side::plus;
    }
    if (measure == unit::Measure::attack) {
        if (plain == "down") return Side::minus;
        if (plain == "up") return Side::plus;
    }
    return Side::none;
}

/// A number at the start of `word`; `word` keeps what follows.
std::optional<double> leading_number(std::string_view& word) {
    std::string_view digits = word;
    if (digits.starts_with('+')) digits.remove_prefix(1);
    double value = 0;
    const auto [end, fault] = std::from_chars(digits.data(), digits.data() + digits.size(), value);
    if (fault != std::errc() || !std::isfinite(value)) return {};
    word = digits.substr(static_cast<std::size_t>(end - digits.data()));
    return value;
}

End end_of(const std::vector<std::string_view>& words, unit::Measure measure) {
    End end;
    for (std::string_view word : words) {
        if (!end.ok && unit::row(measure).sided && yaml::plain_word(word) == "square") {
            end.ok = true;
            continue;
        }
        if (!end.ok)
            if (const auto value = leading_number(word)) {
                end.value = *value;
                end.ok = true;
                if (word.size() > 2 && word.starts_with("°")) word.remove_prefix(2);
                if (word.empty()) continue;
            }
        if (const Side side = side_named(word, measure); side != Side::none)
            end.side = side;
        else if (const auto size = unit_size(unit::row(measure).kind, word))
            end.unit = size;
        else
            end.stranger = word;
    }
    return end;
}

std::string range_example(unit::Measure measure) {
    if (unit::row(measure).sided)
        return unit::row(measure).kind == unit::Kind::length ? "5 L to 5 R" : "2 L to 2 R";
    if (measure == unit::Measure::attack) return "5 down to 2 down";
    switch (unit::row(measure).kind) {
    case unit::Kind::speed:
        return "85 to 90 mph";
    case unit::Kind::length:
        return "140 to 150 yd";
    case unit::Kind::spin:
        return "6000 to 7000";
    case unit::Kind::small_length:
        return "-5 to 5 mm";
    case unit::Kind::angle:
        break;
    }
    return "24 to 28";
}

/// What is wrong with one end, or an empty text.
std::string fault_of(const End& end, unit::Measure measure) {
    if (!end.stranger.empty() && end.stranger.find(',') != std::string_view::npos)
        return "write a decimal point, for example 1.5 L to 1.5 R";
    const std::string word = yaml::plain_word(end.stranger);
    if (unit::row(measure).sided && (word == "open" || word == "closed"))
        return "say left or right of the target instead of " + word + ": " + range_example(measure);
    if (!end.stranger.empty() || !end.ok) return "write it as " + range_example(measure);
    const bool bare = unit::row(measure).sided && end.value != 0 && end.side == Side::none;
    if (bare)
        return "say which side: " + range_example(measure) +
               " (L is left of the target, R is right)";
    if (end.value < 0 && end.side != Side::none) return "write the side or the minus, not both";
    return {};
}

} // namespace

std::optional<double> read_quantity(const yaml::Field& field, unit::Kind kind, unit::Units units) {
    const std::optional<std::string> text = field.text();
    if (!text) return {};
    std::string_view rest = *text;
    const std::optional<double> value = leading_number(rest);
    while (rest.starts_with(' '))
        rest.remove_prefix(1);
    if (value && rest.empty()) return *value * unit::size_of_unit(kind, units);
    if (const auto size = unit_size(kind, rest); value && size) return *value * *size;
    const std::string symbol(unit::symbol(kind, units));
    const bool comma = text->find(',') != std::string::npos;
    field.must("be a number" +
                   (symbol.empty() || symbol == "°" ? "" : ", with or without " + symbol),
               comma ? "write a decimal point, for example 1.5 " + symbol
                     : "write digits, for example 120 " + symbol);
    return {};
}

std::optional<Range> read_range(const yaml::Field& field, unit::Measure measure,
                                unit::Units units) {
    const std::optional<std::string> text = field.text();
    if (!text) return {};
    const std::vector<std::string_view> words = words_of(*text);
    const auto middle = std::ranges::find(words, "to");
    if (middle == words.end()) {
        field.must("be a range with 'to' in it", "for example " + range_example(measure));
        return {};
    }
    const End least = end_of({words.begin(), middle}, measure);
    const End most = end_of({middle + 1, words.end()}, measure);
    for (const End& end : {least, most})
        if (const std::string hint = fault_of(end, measure); !hint.empty()) {
            field.must("be a range", hint);
            return {};
        }
    const double usual = unit::size_of_unit(unit::row(measure).kind, units);
    const double size = most.unit.value_or(least.unit.value_or(usual));
    const auto signed_value = [](const End& end) {
        return end.side == Side::minus ? -end.value : end.value;
    };
    const double a = signed_value(least) * least.unit.value_or(size), b = signed_value(most) * size;
    if (a != b) return Range{std::min(a, b), std::max(a, b)};
    field.must("have two different ends", "for example " + range_example(measure));
    return {};
}

} // namespace record
