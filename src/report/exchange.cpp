#include "report/exchange.hpp"

#include <algorithm>
#include <sstream>

namespace report {

namespace {

constexpr const char* first_line = "lessonleaf binder 2";
constexpr const char* older_line = "lessonleaf binder 1"; ///< does not tell whose it is
constexpr std::string_view whose_line = "whose ";

PageRange pages(std::size_t first_sheet, std::size_t sheets) {
    return {first_sheet * 2 + 1, (first_sheet + sheets) * 2};
}

using Pairs = std::vector<std::pair<std::size_t, std::size_t>>;

/// Sheets that stay: a longest common subsequence.
Pairs staying(const std::vector<std::string>& was, const std::vector<std::string>& is) {
    const std::size_t n = was.size(), m = is.size();
    std::vector<std::vector<std::size_t>> best(n + 1, std::vector<std::size_t>(m + 1, 0));
    for (std::size_t i = n; i-- > 0;)
        for (std::size_t k = m; k-- > 0;)
            best[i][k] =
                was[i] == is[k] ? best[i + 1][k + 1] + 1 : std::max(best[i + 1][k], best[i][k + 1]);
    Pairs out;
    for (std::size_t i = 0, k = 0; i < n && k < m;) {
        if (was[i] == is[k])
            out.emplace_back(i++, k++);
        else if (best[i + 1][k] >= best[i][k + 1])
            ++i;
        else
            ++k;
    }
    return out;
}

} // namespace

Exchange exchange(const std::vector<std::string>& was, const std::vector<std::string>& is) {
    Exchange out;
    Pairs stay = staying(was, is);
    stay.emplace_back(was.size(), is.size());
    std::size_t i = 0, k = 0;
    for (const auto& [a, b] : stay) {
        if (a > i || b > k) {
            Swap swap;
            if (a > i) swap.out = pages(i, a - i);
            if (b > k) swap.in = pages(k, b - k);
            swap.behind = k * 2;
            out.sheets_in += b - k;
            out.swaps.push_back(swap);
        }
        if (a < was.size() && a != b) {
            const PageRange one = pages(a, 1), now = pages(b, 1);
            if (!out.renumbered.empty() && out.renumbered.back().was.last + 1 == one.first &&
                out.renumbered.back().is.last + 1 == now.first)
                out.renumbered.back().was.last = one.last, out.renumbered.back().is.last = now.last;
            else
                out.renumbered.push_back({one, now});
        }
        i = a + 1, k = b + 1;
    }
    return out;
}

std::string written(const BinderNote& note) {
    std::string out = std::string(first_line) + "\n";
    for (const auto& [name, prints] : {std::pair{"now", &note.now}, {"before", &note.before}}) {
        out += name;
        for (const auto& print : *prints)
            out += " " + print;
        out += "\n";
    }
    return out + std::string(whose_line) + note.whose + "\n";
}

std::optional<BinderNote> read_note(const std::string& text) {
    std::istringstream lines(text);
    std::string line;
    if (!std::getline(lines, line) || (line != first_line && line != older_line))
        return std::nullopt;
    BinderNote note;
    while (std::getline(lines, line)) {
        if (line.starts_with(whose_line)) {
            note.whose = line.substr(whose_line.size());
            continue;
        }
        std::istringstream words(line);
        std::string name, print;
        words >> name;
        auto& list = name == "now" ? note.now : note.before;
        while (words >> print)
            list.push_back(print);
    }
    if (note.now.empty()) return std::nullopt;
    return note;
}

} // namespace report
