#include "page/self_check.hpp"

#include "text/font_set.hpp"

#include <algorithm>
#include <cmath>
#include <set>

namespace page {

namespace {

struct Placed {
    ink::Rect box;
    const ink::Words* words = nullptr;
};

/// The sign of a drill, "2" or "H4", ends at the baseline; small letters may reach below it.
bool is_large_sign(const ink::Words& w) {
    constexpr double large = 60; // points
    return w.style.size >= large && std::ranges::all_of(w.text, [](char c) {
               return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z' && c != 'J' && c != 'Q');
           });
}

/// The letters' own box: x-height to a little below the baseline, turned as the words are.
ink::Rect letters(const ink::Words& w) {
    const double up = w.style.size * 0.70, down = w.style.size * (is_large_sign(w) ? 0 : 0.20);
    if (w.turn == 0) return {w.at.x, w.at.y - up, w.width, up + down};
    const double a = -w.turn * 3.14159265358979 / 180, c = std::cos(a), s = std::sin(a);
    ink::Rect box{w.at.x, w.at.y, 0, 0};
    const ink::Point corners[4] = {{0, -up}, {w.width, -up}, {w.width, down}, {0, down}};
    for (const auto& p : corners)
        box = box.united({w.at.x + c * p.x - s * p.y, w.at.y + s * p.x + c * p.y, 0, 0});
    return box;
}

std::vector<Placed> texts_of(const Sheet& sheet) {
    std::vector<Placed> out;
    for (const auto& mark : sheet.marks)
        if (const auto* words = std::get_if<ink::Words>(&mark); words && !words->text.empty())
            out.push_back({letters(*words), words});
    return out;
}

std::string quoted(const ink::Words& words) {
    return "'" + (words.text.size() > 40 ? words.text.substr(0, 40) + "…" : words.text) + "'";
}

std::string way_out(char32_t character) {
    const auto package = text::package_for(character);
    return package.empty() ? "write it in letters of another script"
                           : "add its script with: apt-get install " + std::string(package);
}

} // namespace

std::vector<Fault> self_check(const Book& book, const theme::Theme& theme,
                              const text::Typesetter& typesetter) {
    std::vector<Fault> faults;
    std::set<std::string_view> told; // one fault a package: a name stands on every page
    for (std::size_t i = 0; i < book.sheets.size(); ++i) {
        const ink::Rect live = theme.live(i % 2 == 0);
        const ink::Rect allowed{live.x, 0, live.width, book.sheets[i].size.height};
        const auto texts = texts_of(book.sheets[i]);
        const auto fault = [&](const ink::Words& w, std::string what) {
            faults.push_back({i + 1, quoted(w), std::move(what)});
        };
        for (std::size_t k = 0; k < texts.size(); ++k) {
            const ink::Words& w = *texts[k].words;
            if (!allowed.contains(texts[k].box, 0.8)) fault(w, "stands outside the content");
            if (w.style.size < theme.smallest - 0.01) fault(w, "is smaller than the smallest size");
            const auto missing = typesetter.missing(w.text, w.style);
            if (!missing.empty() && told.insert(text::package_for(missing.front())).second)
                faults.push_back({i + 1, quoted(w), "has letters that no font here can show",
                                  way_out(missing.front())});
            for (std::size_t m = k + 1; m < texts.size(); ++m)
                if (texts[k].box.overlaps(texts[m].box, 0.6))
                    fault(w, "stands over " + quoted(*texts[m].words));
        }
    }
    return faults;
}

} // namespace page
