#include "text/bonds.hpp"

#include <algorithm>

namespace text {

namespace {

constexpr std::size_t longest = 12; ///< bytes of a word that follows its number on the same line
constexpr std::size_t short_word = 3;

bool digit(char c) { return c >= '0' && c <= '9'; }

bool capital(char c) { return c >= 'A' && c <= 'Z'; }

/// "14", "18.", "2.5", "7–8", "4.0°", "80"; not "H1" nor "(2".
bool numeric(std::string_view token) {
    if (token.empty() || !digit(token.front())) return false;
    return std::ranges::none_of(
        token, [](unsigned char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); });
}

bool ends_phrase(std::string_view token) {
    return std::string_view(".,;:)!?").find(token.back()) != std::string_view::npos;
}

/// Words between single spaces of one line of the source.
struct Walk {
    std::string_view words;
    std::vector<std::size_t> out = {};

    std::string_view token(std::size_t from, std::size_t limit) const {
        const std::size_t end = std::min(words.find(' ', from), limit);
        return from < limit ? words.substr(from, end - from) : std::string_view{};
    }

    void pair(std::string_view one, std::string_view two, std::string_view three,
              std::size_t space) {
        const bool counted = numeric(one) && two.size() <= longest && !one.ends_with(',') &&
                             !one.ends_with(';') && !one.ends_with(':');
        const bool numbered = numeric(two) && one.size() <= longest && !ends_phrase(one) &&
                              (three.empty() || ends_phrase(two));
        const bool lettered = one.size() == 1 && capital(one.front()) && capital(two.front());
        if (counted || numbered || lettered || one == "→" || two == "–" || two == "·")
            out.push_back(space);
    }

    void line(std::size_t from, std::size_t limit) {
        bool carried = false; // "12 of 12", "14 de mayo": the little word holds on both sides
        while (from < limit) {
            const std::string_view one = token(from, limit);
            const std::size_t space = from + one.size();
            if (space >= limit) return;
            const std::string_view two = token(space + 1, limit);
            const std::string_view three = token(space + two.size() + 2, limit);
            if (!one.empty() && !two.empty()) {
                pair(one, two, three, space);
                if (carried && two.size() <= longest && (out.empty() || out.back() != space))
                    out.push_back(space);
                carried = numeric(one) && two.size() <= short_word && !ends_phrase(two);
            }
            from = space + 1;
        }
    }
};

} // namespace

std::vector<std::size_t> bonds(std::string_view words) {
    Walk walk{words};
    for (std::size_t from = 0; from < words.size();) {
        const std::size_t limit = std::min(words.find('\n', from), words.size());
        walk.line(from, limit);
        from = limit + 1;
    }
    return walk.out;
}

} // namespace text
