#include "words/number.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <cstdlib>
#include <stdexcept>

namespace words {

namespace {

struct Marks {
    std::string_view language; ///< the part before '-'
    std::string_view decimal, thousands;
    std::size_t least_digits; ///< digits before the decimal mark from which thousands are marked
};

// Unicode CLDR 42, number symbols and minimumGroupingDigits of these languages; a test compares
// with ICU.
constexpr Marks all_marks[] = {
    {"en", ".", ",", 4}, {"de", ",", ".", 4},      {"fr", ",", "\u202F", 4},
    {"es", ",", ".", 5}, {"sv", ",", "\u00A0", 4},
};

const Marks& marks_of(std::string_view language) {
    const auto part = language.substr(0, language.find('-'));
    const auto* found = std::ranges::find(all_marks, part, &Marks::language);
    return found == std::end(all_marks) ? all_marks[0] : *found;
}

/// Adds one to the last digit of a decimal numeral, carrying over its point.
void count_up(std::string& digits) {
    for (auto at = digits.size(); at-- > 0;) {
        if (digits[at] == '.') continue;
        if (digits[at] != '9') {
            ++digits[at];
            return;
        }
        digits[at] = '0';
    }
    digits.insert(digits.begin(), '1');
}

/// The absolute value as plain digits with a point, rounded half away from zero.
std::string plain(double value, int decimals) {
    if (!std::isfinite(value)) throw std::logic_error("a number on a page must be finite");
    if (decimals < 0 || decimals > 9) throw std::logic_error("0 to 9 decimals can be shown");
    char buffer[400]; // the longest double in fixed notation has fewer than 350 characters
    const auto end =
        std::to_chars(buffer, std::end(buffer), std::abs(value), std::chars_format::fixed).ptr;
    std::string digits(buffer, end);
    const auto places = static_cast<std::size_t>(decimals);
    auto point = digits.find('.');
    if (point == std::string::npos) {
        point = digits.size();
        digits += '.';
    }
    const auto keep = point + 1 + places;
    if (digits.size() < keep) digits.append(keep - digits.size(), '0');
    const bool up = digits.size() > keep && digits[keep] >= '5';
    digits.resize(keep);
    if (up) count_up(digits);
    if (decimals == 0) digits.pop_back();
    return digits;
}

bool is_nought(std::string_view digits) {
    return digits.find_first_not_of("0.") == std::string_view::npos;
}

std::string dressed(std::string_view digits, bool negative, const Marks& marks) {
    const auto point = std::min(digits.find('.'), digits.size());
    std::string out;
    if (negative && !is_nought(digits)) out += minus_sign;
    for (std::size_t at = 0; at < point; ++at) {
        const auto left = point - at;
        if (at > 0 && left % 3 == 0 && point >= marks.least_digits) out += marks.thousands;
        out += digits[at];
    }
    if (point < digits.size()) {
        out += marks.decimal;
        out += digits.substr(point + 1);
    }
    return out;
}

} // namespace

std::string fixed(double value, int decimals, std::string_view language) {
    return dressed(plain(value, decimals), value < 0, marks_of(language));
}

std::string whole(long value, std::string_view language) {
    auto digits = std::to_string(value);
    if (value < 0) digits.erase(0, 1);
    return dressed(digits, value < 0, marks_of(language));
}

double rounded(double value, int decimals) {
    const auto digits = plain(value, decimals);
    double out = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), out);
    return value < 0 && out != 0 ? -out : out;
}

} // namespace words
