#include "shots/reading.hpp"

#include "record/unit_size.hpp"
#include "shots/grid.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace shots {

namespace {

bool digit(char c) { return c >= '0' && c <= '9'; }
char small(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

bool same_word(std::string_view text, std::string_view word) {
    return std::ranges::equal(text, word, [](char a, char b) { return small(a) == b; });
}

/// Takes a side word off the front or the back; what is left starts or ends with the number.
Side take_side(std::string_view& text) {
    struct Word {
        std::string_view word;
        Side side;
    };
    constexpr std::array words{Word{"left", Side::left}, Word{"right", Side::right},
                               Word{"l", Side::left}, Word{"r", Side::right}};
    for (const auto& [word, side] : words) {
        if (text.size() <= word.size()) continue;
        const std::string_view rest = text.substr(word.size());
        if (same_word(text.substr(0, word.size()), word) && (rest[0] == ' ' || digit(rest[0]))) {
            text = trimmed(rest);
            return side;
        }
        const std::string_view head = text.substr(0, text.size() - word.size());
        const bool free = head.back() == ' ' || digit(head.back()) || head.ends_with("°");
        if (same_word(text.substr(head.size()), word) && free) {
            text = trimmed(head);
            return side;
        }
    }
    return Side::none;
}

/// Digits and marks at the front of `text`, as far as a number may go.
std::string_view number_part(std::string_view text) {
    std::size_t end = 0;
    while (end < text.size() && (digit(text[end]) || text[end] == '.' || text[end] == ',' ||
                                 (text[end] == '\'' && end > 0)))
        ++end;
    return text.substr(0, end);
}

/// A number with one decimal mark and perhaps thousands, as plain digits with a point.
std::optional<std::string> plain_digits(std::string_view part, unit::Kind kind) {
    const std::size_t last = part.find_last_of(".,");
    std::string plain;
    if (last == std::string_view::npos) {
        for (const char c : part)
            if (c != '\'') plain += c;
        return plain;
    }
    const bool two_marks = part.substr(0, last).find_first_of(".,") != std::string_view::npos;
    const bool same_marks =
        two_marks && part.substr(0, last).find(part[last]) != std::string_view::npos;
    const bool thousands = part.size() - last == 4 && last > 0 && kind == unit::Kind::spin;
    if (same_marks && !thousands) return std::nullopt;
    for (std::size_t i = 0; i < part.size(); ++i) {
        if (digit(part[i])) plain += part[i];
        if (i == last && !thousands) plain += '.';
    }
    return plain;
}

bool parse(std::string_view part, unit::Kind kind, Reading& reading) {
    const auto plain = plain_digits(part, kind);
    if (!plain || plain->empty()) return false;
    const char* const end = plain->data() + plain->size();
    const auto [at, fault] =
        std::from_chars(plain->data(), end, reading.value, std::chars_format::fixed);
    const std::size_t point = plain->find('.');
    reading.decimals = point == std::string::npos ? 0 : static_cast<int>(plain->size() - point - 1);
    return fault == std::errc() && at == end && std::isfinite(reading.value);
}

/// The way out for a cell that is no number: letters that look like digits, else a general word.
std::string way_out(std::string_view text, unit::Measure measure) {
    std::string digits(text);
    for (char& c : digits) {
        if (c == 'O' || c == 'o') c = '0';
        if (c == 'l' || c == 'I') c = '1';
    }
    Reading trial;
    if (digits != text && parse(digits, unit::row(measure).kind, trial))
        return "did you mean " + digits + "? a letter stands among the digits";
    if (unit::row(measure).sided)
        return "write a number, or a side with it, for example 3.2 R; leave the cell empty when it "
               "was not measured";
    return "write a number; leave the cell empty when it was not measured";
}

Reading wrong(std::string hint) {
    Reading reading;
    reading.state = Reading::State::wrong;
    reading.hint = std::move(hint);
    return reading;
}

} // namespace

bool not_measured(std::string_view text) {
    constexpr std::array<std::string_view, 8> words{"-", "--", "n/a", "na", "–", "—", "none", "?"};
    return text.empty() ||
           std::ranges::any_of(words, [&](std::string_view w) { return same_word(text, w); });
}

Reading read_cell(std::string_view text, unit::Measure measure) {
    const std::string_view written = text = trimmed(text);
    if (not_measured(text)) return {};
    const unit::MeasureRow& row = unit::row(measure);
    Reading reading;
    if (row.sided && !digit(text.back())) reading.side = take_side(text);
    if (row.sided && reading.side == Side::none && !digit(text[0])) reading.side = take_side(text);
    bool minus = false;
    for (const std::string_view sign : {"-", "+", "−"})
        if (text.starts_with(sign)) {
            minus = sign != "+";
            text = trimmed(text.substr(sign.size()));
            break;
        }
    const std::string_view part = number_part(text);
    if (!parse(part, row.kind, reading)) return wrong(way_out(written, measure));
    const std::string_view rest = trimmed(text.substr(part.size()));
    if (!rest.empty()) {
        reading.unit = record::unit_size(row.kind, rest);
        if (!reading.unit) return wrong(way_out(written, measure));
    }
    if (minus && reading.side != Side::none) return wrong("write the side or the minus, not both");
    if (minus) reading.value = -reading.value;
    reading.state = Reading::State::number;
    return reading;
}

} // namespace shots
