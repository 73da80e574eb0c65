#include "drills/drill.hpp"

#include "yaml/field.hpp"

#include <algorithm>
#include <array>
#include <map>

namespace drills {

namespace {

using yaml::Field;

constexpr std::array<std::string_view, 8> families{"hold",   "face",  "path", "loft",
                                                   "strike", "speed", "aim",  "test"};
constexpr std::array<std::string_view, 5> spaces{"no swing", "swing", "range", "never a swing",
                                                 "range only"};
constexpr std::size_t most_steps = 6, most_junior_steps = 3, words_a_step = 15;

/// A field of one line, its longest text in characters, so that a drill always fits one side.
struct Row {
    std::string_view key;
    std::string Drill::*member;
    std::size_t longest;
    std::string_view example; ///< the value to add; empty when the field may be left out
};
constexpr Row rows[] = {
    {"name", &Drill::name, 28, "Lay and close"},
    {"purpose", &Drill::purpose, 90, "It puts the handle in the fingers."},
    {"need", &Drill::need, 80, "Club"},
    {"dose", &Drill::dose, 60, "10 times, on 5 days a week"},
    {"check", &Drill::check, 90, "Are two knuckles in sight?"},
    {"good enough", &Drill::good_enough, 70, ""},
    {"pass", &Drill::pass, 80, ""},
    {"cue", &Drill::cue, 60, ""},
    {"repair", &Drill::repair, 110, ""},
    {"caution", &Drill::caution, 110, ""},
    {"picture", &Drill::picture, 40, ""},
    {"place", &Drill::place, 80, ""},
    {"blend", &Drill::blend, 80, ""},
    {"play", &Drill::play, 80, ""},
};

constexpr std::array<std::string_view, 3> counted{"right", "right first", "called"};
constexpr std::array<std::string_view, 2> marks{"gate", "window"};

std::size_t letters(std::string_view text) {
    return static_cast<std::size_t>(std::ranges::count_if(
        text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

std::size_t words(std::string_view text) {
    std::size_t count = 0;
    bool inside = false;
    for (const char c : text) {
        if (c != ' ' && !inside) ++count;
        inside = c != ' ';
    }
    return count;
}

void expect_short(const Field& field, std::string_view text, std::size_t longest) {
    if (const auto found = letters(text); found > longest)
        field.error(field.called() + " has " + std::to_string(found) + " characters, at most " +
                        std::to_string(longest) + " fit",
                    "say it in fewer words, so that the drill fits one page");
}

const std::vector<std::string_view>& known_keys() {
    static const std::vector<std::string_view> keys = [] {
        std::vector<std::string_view> all{"id",           "family", "space", "minutes", "steps",
                                          "junior steps", "serves", "count", "easier",  "mark"};
        for (const auto& row : rows)
            all.push_back(row.key);
        return all;
    }();
    return keys;
}

std::vector<std::string> read_steps(const Field& list, std::size_t most) {
    std::vector<std::string> steps;
    for (const auto& item : list.items()) {
        auto text = item.text();
        if (!text) continue;
        if (words(*text) > words_a_step)
            item.warning(item.called() + " has more than 15 words",
                         "one action a step, a verb first; short steps are done");
        expect_short(item, *text, 90);
        steps.push_back(std::move(*text));
    }
    if (steps.size() > most)
        list.error(list.called() + " has " + std::to_string(steps.size()) + " steps, at most " +
                       std::to_string(most) + " fit",
                   "leave out what a student can do without");
    return steps;
}

/// In a translation every line may be left out.
void read_lines(const Field& field, Drill& drill, bool translation) {
    for (const auto& row : rows) {
        const bool optional = translation || row.example.empty();
        const auto line = optional ? field.at(row.key) : field.required(row.key, row.example);
        if (auto text = line.text()) {
            expect_short(line, *text, row.longest);
            drill.*row.member = std::move(*text);
        }
    }
}

void read_count(const Field& field, Count& count) {
    if (!field) return;
    field.only({"tries", "pass", "days", "calls", "of"});
    count.tries = field.required("tries", "10").whole(1, 50).value_or(0);
    if (const auto pass = field.at("pass").whole(1, 50)) count.pass = *pass;
    if (const auto days = field.at("days").whole(1, 14)) count.days = *days;
    if (const auto calls = field.at("calls").whole(1, 50)) count.calls = *calls;
    if (const auto of = field.at("of").one_of(counted)) count.of = static_cast<Count::Of>(*of);
    if (count.tries > 0 && std::max(count.pass, count.calls) > count.tries)
        field.error("'count' asks for more than its " + std::to_string(count.tries) + " tries",
                    "for example count: {tries: 10, pass: 8}");
}

Drill read_drill(const Field& field) {
    Drill drill;
    drill.span = field.span();
    field.only(known_keys());
    drill.id = field.required("id", "H1").text().value_or("");
    if (const auto family = field.required("family", "hold").one_of(families))
        drill.family = families[*family];
    if (const auto space = field.required("space", "no swing").one_of(spaces))
        drill.space = static_cast<Space>(*space);
    if (const auto minutes = field.at("minutes").whole(1, 60)) drill.minutes = *minutes;
    read_lines(field, drill, false);
    drill.steps = read_steps(field.required("steps", "[Take your hold., Look down.]"), most_steps);
    drill.junior_steps = read_steps(field.at("junior steps"), most_junior_steps);
    read_count(field.at("count"), drill.count);
    drill.easier = field.at("easier").text().value_or("");
    if (const auto mark = field.at("mark").one_of(marks)) drill.mark = static_cast<Mark>(*mark + 1);
    for (const auto& item : field.at("serves").items())
        if (auto text = item.text()) drill.serves.push_back(std::move(*text));
    return drill;
}

/// The words of one drill in another language; how the drill is done stays as it was.
void reword(const Field& field, std::vector<Drill>& library) {
    static const std::vector<std::string_view> keys = [] {
        std::vector<std::string_view> all{"id", "steps", "junior steps"};
        for (const auto& row : rows)
            if (row.key != "picture") all.push_back(row.key);
        return all;
    }();
    field.only(keys);
    const auto id = field.required("id", "H1").text();
    if (!id) return;
    const auto drill = std::ranges::find(library, *id, &Drill::id);
    if (drill == library.end())
        return field.at("id").error("there is no drill '" + *id + "' to translate",
                                    "use the id of a drill in templates/drills/en/");
    read_lines(field, *drill, true);
    if (const auto steps = field.at("steps")) drill->steps = read_steps(steps, most_steps);
    if (const auto steps = field.at("junior steps"))
        drill->junior_steps = read_steps(steps, most_junior_steps);
}

} // namespace

std::vector<Drill> reworded(std::vector<Drill> library, const diag::Source& source,
                            diag::Findings& findings) {
    const yaml::Document document(source, findings);
    if (!document.readable()) return library;
    for (const auto& item : document.root().items())
        reword(item, library);
    return library;
}

std::vector<Drill> read_drills(const diag::Source& source, diag::Findings& findings) {
    const yaml::Document document(source, findings);
    std::vector<Drill> drills;
    if (!document.readable()) return drills;
    std::map<std::string, std::uint32_t> seen;
    for (const auto& item : document.root().items()) {
        auto drill = read_drill(item);
        if (drill.id.empty()) continue;
        if (const auto [at, fresh] = seen.try_emplace(drill.id, drill.span.line); !fresh) {
            item.at("id").error("the drill '" + drill.id + "' is there twice",
                                "it stands on line " + std::to_string(at->second) +
                                    " too: give one of them another id");
            continue;
        }
        drills.push_back(std::move(drill));
    }
    return drills;
}

std::vector<Drill> merged(std::vector<Drill> library, std::vector<Drill> own,
                          diag::Findings& findings) {
    for (auto& drill : own) {
        const auto same = std::ranges::find(library, drill.id, &Drill::id);
        if (same == library.end()) {
            library.push_back(std::move(drill));
            continue;
        }
        if (!same->caution.empty() && drill.caution.empty())
            findings.error(drill.span,
                           "the drill '" + drill.id + "' drops the caution of the one it replaces",
                           "a caution may be said in other words, never left out: add 'caution: " +
                               same->caution + "'");
        *same = std::move(drill);
    }
    return library;
}

void check_easier(const std::vector<Drill>& all, diag::Findings& findings) {
    for (const auto& drill : all)
        if (!drill.easier.empty() && (drill.easier == drill.id || !find(all, drill.easier)))
            findings.error(drill.span,
                           "the drill '" + drill.id + "' names '" + drill.easier +
                               "' as its easier one, which is no other drill",
                           "name a drill that is there, or leave 'easier' out");
}

const Drill* find(const std::vector<Drill>& all, std::string_view id) {
    const auto found = std::ranges::find(all, id, &Drill::id);
    return found == all.end() ? nullptr : &*found;
}

} // namespace drills
