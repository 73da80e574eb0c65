#include "record/parts.hpp"
#include "record/read_quantity.hpp"

#include <charconv>

namespace record {

namespace {

constexpr std::string_view example =
    "for example 'ball speed below 85 % of the block median' or 'carry below 60 m'";

/// A rule cut at its turning word: "carry" | below | "60 m".
struct Cut {
    std::string_view measure, limit;
    bool below = true;
    bool ok = false;
};

Cut cut(std::string_view text) {
    for (const bool below : {true, false}) {
        const std::string_view word = below ? " below " : " above ";
        const std::size_t at = text.find(word);
        if (at != std::string_view::npos)
            return {text.substr(0, at), text.substr(at + word.size()), below, true};
    }
    return {};
}

bool of_median(std::string_view rest) {
    const std::string word = yaml::plain_word(rest);
    return word == "% of the block median" || word == "% of the median" ||
           word == "percent of the block median" || word == "% of block median";
}

bool read_limit(const yaml::Field& field, std::string_view text, SetAsideRule& rule) {
    double value = 0;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), value);
    std::string_view rest = text.substr(static_cast<std::size_t>(end - text.data()));
    while (rest.starts_with(' '))
        rest.remove_prefix(1);
    if (fault == std::errc() && of_median(rest)) {
        rule.limit = value / 100;
        rule.of_block_median = true;
        if (value > 0 && value < 1000) return true;
        field.must("name a part of the median", std::string(example));
        return false;
    }
    const unit::Kind kind = unit::row(rule.measure).kind;
    const auto size = unit_size(kind, rest);
    if (fault == std::errc() && (size || (rest.empty() && kind == unit::Kind::angle))) {
        rule.limit = value * size.value_or(1);
        return true;
    }
    const bool unitless = fault == std::errc() && rest.empty();
    field.must("end with a limit", unitless ? "write the unit too, for example 'carry below 60 m'"
                                            : std::string(example));
    return false;
}

} // namespace

void read_set_aside_rules(const yaml::Field& field, ShotSource& shots) {
    for (const yaml::Field& item : field.items()) {
        const auto text = item.text();
        if (!text) continue;
        SetAsideRule rule{unit::Measure::carry, true, 0, false, *text, item.span()};
        const Cut parts = cut(*text);
        if (!parts.ok) {
            item.must("be a rule with below or above", std::string(example));
            continue;
        }
        const auto measure = unit::measure_named(yaml::plain_word(parts.measure));
        if (!measure) {
            const std::string_view close = diag::nearest(parts.measure, measure_keys());
            item.must("begin with a measure", close.empty()
                                                  ? "measures are " + diag::either(measure_keys())
                                                  : "did you mean '" + std::string(close) + "'?");
            continue;
        }
        rule.measure = *measure;
        rule.below = parts.below;
        if (read_limit(item, parts.limit, rule)) shots.rules.push_back(std::move(rule));
    }
}

} // namespace record
