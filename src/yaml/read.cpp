#include "yaml/field.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace yaml {

namespace {

constexpr std::array<std::string_view, 11> small_numbers{
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"};

std::string_view trimmed(std::string_view text) {
    const auto inside = [](char c) { return c != ' ' && c != '\t' && c != '\n' && c != '\r'; };
    while (!text.empty() && !inside(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && !inside(text.back()))
        text.remove_suffix(1);
    return text;
}

std::optional<double> finite(std::string_view text) {
    if (text.starts_with('+')) text.remove_prefix(1);
    double value = 0;
    const auto [end, fault] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (fault != std::errc() || end != text.data() + text.size() || !std::isfinite(value))
        return {};
    return value;
}

std::string short_number(double value) {
    std::array<char, 32> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value).ptr;
    return {buffer.data(), end};
}

/// The way out for a text that is meant as a number.
std::string number_hint(std::string_view written) {
    const std::string word = plain_word(written);
    const auto spelt = std::ranges::find(small_numbers, word);
    if (spelt != small_numbers.end())
        return "write the digit: " + std::to_string(spelt - small_numbers.begin());
    std::string text(written);
    if (std::ranges::count(text, ',') == 1) {
        std::ranges::replace(text, ',', '.');
        if (finite(text)) return "write a decimal point: " + text;
    }
    for (const std::string_view half : {"½", " 1/2"})
        if (written.ends_with(half) && finite(written.substr(0, written.size() - half.size())))
            return "write the half as .5: " +
                   std::string(written.substr(0, written.size() - half.size())) + ".5";
    if (text.starts_with("−") && finite(text.substr(3)))
        return "use a plain minus: -" + text.substr(3);
    return "write digits only, for example 2.5";
}

} // namespace

bool Field::expect_text(std::string_view wanted) const {
    if (!*this) return false;
    if (is_text()) return true;
    must(wanted, is_list()
                     ? "take away the brackets or dashes: one value is wanted here"
                     : "if it is a text with a colon in it, put the whole text in double quotes");
    return false;
}

std::optional<std::string> Field::text() const {
    if (!expect_text("be a text")) return {};
    const std::string_view text = trimmed(node_->text);
    if (text.empty()) return {};
    return std::string(text);
}

std::optional<double> Field::number() const {
    if (!expect_text("be a number")) return {};
    std::string_view text = trimmed(node_->text);
    for (const std::string_view degree : {"°", "degrees", "degree", "deg"})
        if (text.ends_with(degree)) {
            text = trimmed(text.substr(0, text.size() - degree.size()));
            break;
        }
    const std::optional<double> value = finite(text);
    if (!value) must("be a number", number_hint(text));
    return value;
}

std::optional<double> Field::number(double least, double most) const {
    const std::optional<double> value = number();
    if (!value || (*value >= least && *value <= most)) return value;
    must("be from " + short_number(least) + " to " + short_number(most),
         "check the number, or leave the line out");
    return {};
}

std::optional<int> Field::whole(int least, int most) const {
    if (!expect_text("be a whole number")) return {};
    const bool digits =
        written().find_first_of("0123456789") != std::string_view::npos; // else a word
    if (!digits) {
        const std::string hint = number_hint(trimmed(written()));
        must("be a whole number",
             hint.find("2.5") == std::string::npos
                 ? hint
                 : "write it in digits, for example " + std::to_string(std::max(least, 1)));
        return {};
    }
    const std::optional<double> value = number();
    if (!value) return {};
    if (*value == std::floor(*value) && *value >= least && *value <= most)
        return static_cast<int>(*value);
    must("be a whole number from " + std::to_string(least) + " to " + std::to_string(most),
         "check the number, or leave the line out");
    return {};
}

namespace {

/// What the coach means in another language of the sheet; empty when that is not known.
std::string_view yes_or_no_meant(std::string_view word) {
    constexpr std::array<std::string_view, 7> yes{"ja", "oui", "si", "sí", "y", "j", "jo"};
    constexpr std::array<std::string_view, 4> no{"nein", "non", "nej", "n"};
    if (std::ranges::find(yes, word) != yes.end()) return "yes";
    return std::ranges::find(no, word) != no.end() ? "no" : "";
}

} // namespace

std::optional<bool> Field::yes_no() const {
    if (!expect_text("be yes or no")) return {};
    const std::string word = plain_word(trimmed(node_->text));
    if (word == "yes" || word == "true") return true;
    if (word == "no" || word == "false") return false;
    const std::string key = name_.substr(1, name_.size() - 2) + ": ";
    const std::string_view meant = yes_or_no_meant(word);
    must("be yes or no", meant.empty()
                             ? "write " + key + "yes or " + key + "no, or leave the line out"
                             : "write " + key + std::string(meant));
    return {};
}

std::optional<std::size_t> Field::one_of(std::span<const std::string_view> words) const {
    const std::vector<std::string_view> known(words.begin(), words.end());
    const std::string wanted = "be " + diag::either(known);
    if (!expect_text(wanted)) return {};
    const std::string word = plain_word(trimmed(node_->text));
    const auto same = [&](std::string_view w) { return plain_word(w) == word; };
    const auto found = std::ranges::find_if(known, same);
    if (found != known.end()) return static_cast<std::size_t>(found - known.begin());
    const auto whole = std::ranges::find_if(known, [&](std::string_view w) {
        return word.size() > 1 && plain_word(w).starts_with(word);
    });
    const std::string_view close = whole != known.end() ? *whole : diag::nearest(word, known);
    must(wanted, close.empty() ? "write one of these, word for word"
                               : "did you mean '" + std::string(close) + "'?");
    return {};
}

/// "name:Ruth" and the 5 of "lie: 62,5" inside brackets come out as keys without a value.
bool Field::slip(const Entry& entry) const {
    if (entry.value.kind != Node::Kind::empty) return false;
    const std::size_t colon = entry.key.find(':');
    if (colon != std::string::npos) {
        const std::string key = entry.key.substr(0, colon);
        findings_->error(entry.key_span,
                         "a space is missing after the colon of " + diag::quote(key),
                         "write '" + key + ": " + entry.key.substr(colon + 1) + "'");
        return true;
    }
    if (entry.key.find_first_not_of("0123456789") != std::string::npos && !entry.key.ends_with("°"))
        return false;
    findings_->error(entry.key_span,
                     "a comma ends a value inside brackets, so this number stands alone",
                     "write decimals with a point, for example 62.5");
    return true;
}

void Field::only(const std::vector<std::string_view>& known,
                 const std::vector<std::string_view>& told) const {
    if (!*this) return;
    if (!is_map())
        return must("be a group of keys", "write its parts in braces, for example {" +
                                              std::string(known.front()) + ": ...}");
    for (const Entry& entry : node_->entries) {
        if (std::ranges::find(known, entry.key) != known.end() ||
            std::ranges::find(told, yaml::plain_word(entry.key)) != told.end())
            continue;
        if (slip(entry)) continue;
        const std::string_view close = diag::nearest(entry.key, known);
        entry.meant = close;
        const std::string where = path_.empty() ? whole() : name_;
        findings_->error(entry.key_span, where + " has no key " + diag::quote(entry.key),
                         close.empty() ? "keys here are " + diag::either(known)
                                       : "did you mean '" + std::string(close) + "'?");
    }
}

} // namespace yaml
