#include "diag/finding.hpp"

#include <algorithm>

namespace diag {

namespace {

constexpr std::size_t longest = 64;

char plain(char c) {
    if (c == '_' || c == '-') return ' ';
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

/// Optimal string alignment: insertions, deletions, replacements and swaps of neighbours.
std::size_t distance(std::string_view a, std::string_view b) {
    std::vector<std::size_t> two_up(b.size() + 1), up(b.size() + 1), row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j)
        up[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const bool same = plain(a[i - 1]) == plain(b[j - 1]);
            row[j] = std::min({up[j] + 1, row[j - 1] + 1, up[j - 1] + (same ? 0U : 1U)});
            const bool swapped = i > 1 && j > 1 && plain(a[i - 1]) == plain(b[j - 2]) &&
                                 plain(a[i - 2]) == plain(b[j - 1]);
            if (swapped) row[j] = std::min(row[j], two_up[j - 2] + 1);
        }
        two_up.swap(up);
        up.swap(row);
    }
    return up[b.size()];
}

/// The longest known word that is a part of `word`, or the first that `word` is a part of:
/// "clubpath" is for "path", "thumb" for "thumb side".
std::string_view part_of(std::string_view word, const std::vector<std::string_view>& known) {
    constexpr std::size_t telling = 4;
    const auto holds = [](std::string_view whole, std::string_view part) {
        const auto same = [](char a, char b) { return plain(a) == plain(b); };
        return part.size() >= telling && std::search(whole.begin(), whole.end(), part.begin(),
                                                     part.end(), same) != whole.end();
    };
    std::string_view longest_part;
    for (const std::string_view candidate : known)
        if (holds(word, candidate) && candidate.size() > longest_part.size())
            longest_part = candidate;
    if (!longest_part.empty()) return longest_part;
    const auto whole =
        std::ranges::find_if(known, [&](std::string_view k) { return holds(k, word); });
    return whole == known.end() ? std::string_view() : *whole;
}

} // namespace

std::string_view nearest(std::string_view word, const std::vector<std::string_view>& known) {
    if (word.empty() || word.size() > longest) return {};
    std::size_t best = std::max<std::size_t>(1, word.size() / 3) + 1;
    std::string_view found;
    for (const std::string_view candidate : known) {
        if (candidate.empty() || candidate.size() > longest) continue;
        const std::size_t d = distance(word, candidate);
        if (d >= best || d >= candidate.size()) continue;
        best = d;
        found = candidate;
    }
    return found.empty() ? part_of(word, known) : found;
}

std::string either(const std::vector<std::string_view>& words, bool quoted) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        if (i > 0) text += i + 1 == words.size() ? " or " : ", ";
        text += quoted ? quote(words[i]) : std::string(words[i]);
    }
    return text;
}

} // namespace diag
