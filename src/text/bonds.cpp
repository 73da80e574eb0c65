#include "text/bonds.hpp"

#include <algorithm>
#include <array>

namespace text {

namespace {

constexpr std::size_t longest = 12; ///< bytes of a word that follows its number on the same line
constexpr std::size_t short_word = 3;

bool digit(char c) { return c >= '0' && c <= '9'; }

bool capital(std::string_view token) {
    return !token.empty() && token.front() >= 'A' && token.front() <= 'Z';
}

/// "14", "18.", "2.5", "7–8", "4.0°", "80"; not "H1" nor "(2".
bool numeric(std::string_view token) {
    if (token.empty() || !digit(token.front())) return false;
    return std::ranges::none_of(
        token, [](unsigned char c) { return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z'); });
}

bool ends_phrase(std::string_view token) {
    return !token.empty() && std::string_view(".,;:)!?").find(token.back()) != token.npos;
}

/// Whether the number between these two belongs to the name before it: "Eisen 7 mit", "Page 5 of
/// 8", "Eisen 6 28°", "fer 7 courant".
bool named(std::string_view name, std::string_view next) {
    constexpr auto clubs = std::to_array<std::string_view>({"fer", "bois", "hierro", "madera"});
    constexpr auto joiners =
        std::to_array<std::string_view>({"of", "and", "or", "von", "mit", "und", "oder", "sur",
                                         "et", "avec", "av", "och", "med", "y", "con"});
    if (std::ranges::find(clubs, name) != clubs.end()) return true;
    return capital(name) && (numeric(next) || std::ranges::find(joiners, next) != joiners.end());
}

/// Words between single spaces of one line of the source.
struct Walk {
    std::string_view words;
    std::vector<std::size_t> out = {};

    std::string_view token(std::size_t from, std::size_t limit) const {
        const std::size_t end = std::min(words.find(' ', from), limit);
        return from < limit ? words.substr(from, end - from) : std::string_view{};
    }

    bool bound(std::string_view one, std::string_view two, std::string_view three) const {
        if (one.empty() || two.empty()) return false;
        const bool counted = numeric(one) && two.size() <= longest && !one.ends_with(',') &&
                             !one.ends_with(';') && !one.ends_with(':');
        const bool numbered =
            numeric(two) && one.size() <= longest && !ends_phrase(one) &&
            (three.empty() || (ends_phrase(two) && capital(one)) || named(one, three));
        const bool lettered = one.size() == 1 && capital(one) && capital(two);
        return counted || numbered || lettered || one == "→" || two == "–" || two == "·";
    }

    void line(std::size_t from, std::size_t limit) {
        bool carried = false; // "12 of 12", "14 de mayo": the little word holds on both sides
        std::string_view before;
        while (from < limit) {
            const std::string_view one = token(from, limit);
            const std::size_t space = from + one.size();
            if (space >= limit) return;
            const std::string_view two = token(space + 1, limit);
            const std::string_view three = token(space + two.size() + 2, limit);
            const bool of_name = numeric(one) && !before.empty() && named(before, two);
            if (!of_name &&
                (bound(one, two, three) || (carried && !two.empty() && two.size() <= longest)))
                out.push_back(space);
            carried = numeric(one) && !of_name && two.size() <= short_word && !ends_phrase(two);
            before = one;
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
