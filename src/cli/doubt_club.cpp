#include "cli/doubt_club.hpp"

#include "yaml/field.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace cli {

namespace {

constexpr std::array<std::string_view, 10> numbers{"zero", "one", "two",   "three", "four",
                                                   "five", "six", "seven", "eight", "nine"};

struct Short {
    std::string_view written, meant;
};
constexpr std::array shorts{
    Short{"i", "iron"},       Short{"irons", "iron"},    Short{"w", "wood"},
    Short{"h", "hybrid"},     Short{"rescue", "hybrid"}, Short{"pw", "pitching wedge"},
    Short{"gw", "gap wedge"}, Short{"aw", "gap wedge"},  Short{"sw", "sand wedge"},
    Short{"lw", "lob wedge"}, Short{"dr", "driver"},     Short{"1 wood", "driver"},
};

/// Words and numbers apart: "7i" and "i7" are "7" and "i".
std::vector<std::string> words_of(std::string_view name) {
    std::vector<std::string> out;
    char last = ' ';
    for (const char c : yaml::plain_word(name)) {
        const bool digit = c >= '0' && c <= '9', after = last >= '0' && last <= '9';
        if (c == ' ') {
            last = c;
            continue;
        }
        if (last == ' ' || digit != after) out.emplace_back();
        out.back() += last = c;
    }
    return out;
}

/// The number of a club, as a word; empty without one.
std::string_view number_of(std::string_view name) {
    for (const auto& word : words_of(name)) {
        if (const auto at = std::ranges::find(numbers, word); at != numbers.end()) return *at;
        if (word.size() == 1 && word[0] >= '0' && word[0] <= '9')
            return numbers[static_cast<std::size_t>(word[0] - '0')];
    }
    return {};
}

/// "7 iron", "7i" and "iron 7" as "seven iron"; "PW" as "pitching wedge".
std::string spelt_out(std::string_view name) {
    const std::string_view number = number_of(name);
    std::string out(number);
    for (const auto& word : words_of(name)) {
        if (word == number || (word.size() == 1 && word[0] >= '0' && word[0] <= '9')) continue;
        const auto meant = std::ranges::find(shorts, word, &Short::written);
        out +=
            (out.empty() ? "" : " ") + (meant == shorts.end() ? word : std::string(meant->meant));
    }
    return out;
}

/// What the usual clubs are called: by the sheet's language, and in English.
struct Usual {
    const drills::TypicalClub* club;
    std::string name;
};

std::vector<Usual> usual_clubs(const Workshop& workshop, const std::string& language) {
    std::vector<Usual> out;
    for (const std::string& tongue : {language, std::string("en-GB")}) {
        const words::Speaker speaker(workshop.wording(tongue), {});
        for (const auto& club : workshop.clubs())
            if (const std::string key = "club." + club.key; speaker.has(key))
                out.push_back({&club, speaker.say(key)});
    }
    for (const auto& club : workshop.clubs())
        out.push_back({&club, yaml::plain_word(club.key)});
    return out;
}

const drills::TypicalClub* named(const std::vector<Usual>& usual, std::string_view name) {
    const auto found = std::ranges::find(usual, yaml::plain_word(name),
                                         [](const Usual& u) { return yaml::plain_word(u.name); });
    return found == usual.end() ? nullptr : found->club;
}

/// Whether two names surely mean two clubs; a name that nobody knows may mean any club of its
/// number.
bool surely_differ(const std::string& a, const std::string& b, const std::vector<Usual>& usual) {
    if (spelt_out(a) == spelt_out(b)) return false;
    const auto known = [&](const std::string& name) {
        const auto* club = named(usual, name);
        return club ? club : named(usual, spelt_out(name));
    };
    const auto *one = known(a), *other = known(b);
    if (one && other) return one != other;
    return !number_of(a).empty() && !number_of(b).empty() && number_of(a) != number_of(b);
}

/// The known name that is likely meant; one with another number is another club.
std::string meant(const std::string& name, const std::vector<record::Club>& bag,
                  const std::vector<Usual>& usual) {
    std::vector<std::string_view> known;
    for (const auto& club : bag)
        known.emplace_back(club.name);
    for (const auto& one : usual)
        known.emplace_back(one.name);
    const std::string whole = spelt_out(name);
    for (const auto candidate : known)
        if (yaml::plain_word(candidate) == whole) return std::string(candidate);
    const std::string_view number = number_of(name);
    std::erase_if(known, [&](auto k) { return !number.empty() && number_of(k) != number; });
    const std::string_view near = diag::nearest(name, known);
    return std::string(near.empty() ? diag::nearest(whole, known) : near);
}

} // namespace

void doubt_lofts(const Workshop& workshop, const std::vector<record::Club>& bag,
                 const std::string& language, diag::Findings& findings) {
    constexpr double most_apart = 10; // degrees; common practice, no source
    const auto usual = usual_clubs(workshop, language);
    const auto shown = [](double degrees) {
        std::string text = std::to_string(std::round(degrees * 10) / 10);
        text.erase(text.find_last_not_of('0') + 1);
        return text.ends_with('.') ? text.substr(0, text.size() - 1) : text;
    };
    for (const auto& club : bag) {
        const auto* typical = named(usual, club.name);
        if (!typical || !club.loft || std::abs((*club.loft - typical->loft).value) <= most_apart)
            continue;
        findings.warning(club.span,
                         "a loft of " + shown(club.loft->value) + "° is far from the " +
                             shown(typical->loft.value) + "° that are usual for " +
                             diag::quote(club.name),
                         "look at the decimal point, and at the name of the club");
    }
}

void doubt_club(const Workshop& workshop, const record::Lesson& lesson, diag::Findings& findings) {
    const record::Club& club = lesson.club;
    if (club.name.empty()) return;
    const auto known = std::ranges::find(lesson.bag, yaml::plain_word(club.name),
                                         [](const auto& c) { return yaml::plain_word(c.name); });
    const bool own = known == lesson.bag.end() || known->loft != club.loft;
    if (own) doubt_lofts(workshop, {club}, lesson.language, findings);
    doubt_lofts(workshop, lesson.bag, lesson.language, findings);
    if (club.loft || known != lesson.bag.end()) return;
    const auto usual = usual_clubs(workshop, lesson.language);
    if (named(usual, club.name)) return;
    const std::string close = meant(club.name, lesson.bag, usual);
    if (close.empty() && !lesson.shots) return;
    findings.warning(
        club.span,
        diag::quote(club.name) +
            " is in no bag and none of the usual clubs, so its loft and the drawn "
            "flights are left out",
        (close.empty() ? "say its loft: " : "did you mean '" + close + "'? else say its loft: ") +
            "club: {name: " + club.name + ", loft: 32}");
}

void doubt_table_club(const Workshop& workshop, const record::Lesson& lesson,
                      const shots::Table& table, const diag::Source& source,
                      diag::Findings& findings) {
    const auto clubs = shots::clubs_compared(table);
    if (lesson.club.name.empty() || clubs.size() != 1) return;
    if (!surely_differ(lesson.club.name, clubs[0], usual_clubs(workshop, lesson.language))) return;
    const auto first = std::ranges::find(table.shots, clubs[0], &shots::Shot::club);
    findings.warning(lesson.club.span,
                     "the club is " + diag::quote(lesson.club.name) + " here, and " +
                         diag::quote(clubs[0]) + " in " +
                         fs::path(source.name()).filename().string() + " from line " +
                         std::to_string(first->line) + " on",
                     "correct one of the two: name and loft are printed from the record");
}

} // namespace cli
