#include "cli/held_of.hpp"

#include "cli/check_other.hpp"
#include "record/term.hpp"
#include "words/date.hpp"

#include <algorithm>

namespace cli {

namespace {

std::string joined(const std::vector<std::string>& words) {
    std::string out;
    for (const std::string& word : words)
        if (!word.empty()) out += (out.empty() ? "" : ", ") + word;
    return out;
}

std::string mailbox(const people::Addressee& to) {
    if (to.address.value.empty()) return to.name;
    return to.name.empty() ? to.address.value : to.name + " <" + to.address.value + ">";
}

const char* paper_word(record::Paper paper) {
    return paper == record::Paper::letter ? "Letter" : paper == record::Paper::a5 ? "A5" : "A4";
}

report::HeldPart person_part(const Academy& academy, const people::Person& person,
                             const words::Speaker& say) {
    report::HeldPart part{say.say("held.who"), {}};
    const auto row = [&](const char* key, std::string words) {
        if (!words.empty()) part.rows.push_back({say.say(key), std::move(words)});
    };
    row("held.code", person.code.value);
    row("held.name", person.full_name());
    row("held.hand", say.say("held.hand.words"));
    row("held.age", say.say("held.age.words"));
    row("held.ways",
        joined({language_of(academy, person), person.paper ? paper_word(*person.paper) : "",
                person.large_print.value_or(false) ? say.say("held.large") : "",
                person.glove.value_or(false) ? say.say("held.glove") : ""}));
    std::vector<std::string> clubs;
    for (const record::Club& club : person.bag)
        clubs.push_back(club.name);
    row("held.bag", joined(clubs));
    if (person.guardian)
        row("held.guardian", mailbox(*person.guardian));
    else if (!person.send_to.address.value.empty())
        row("held.send-to", mailbox(person.send_to));
    if (person.agreed) row("held.agreed", words::date_long(*person.agreed, say));
    return part;
}

std::string until_words(const Academy& academy, const people::Person& person,
                        const Lessons& lessons, const words::Speaker& say) {
    const auto due = due_of(academy, person, lessons);
    if (!due) return say.say("held.until.open");
    const std::string date = words::date_long(*due, say);
    if (person.kept_until) return date;
    return say.say("held.until.months", {{"n", *academy.house->kept_months}, {"date", date}});
}

std::string lesson_words(const Read& read, const words::Speaker& say) {
    const record::Lesson& lesson = read.lesson;
    std::vector<std::string> what{say.say("held.what.record")};
    const auto counted = [&](const char* key, std::size_t n) {
        if (n > 0) what.push_back(say.say(key, {{"n", n}}));
    };
    counted("held.what.shots", read.table ? read.table->shots.size() : 0);
    counted("held.what.photographs",
            (lesson.photographs.before ? 1U : 0U) + (lesson.photographs.after ? 1U : 0U));
    counted("held.what.drills", lesson.drills.size());
    if (!lesson.returned.empty()) what.push_back(say.say("held.what.returned"));
    return joined(what);
}

/// Lessons at which pain was noted; nothing else about health can be written down.
report::HeldPart health_part(const Lessons& lessons, const words::Speaker& say) {
    report::HeldPart part{say.say("held.health"), {}};
    for (const auto& lesson : lessons)
        if (lesson->lesson.pain)
            part.rows.push_back(
                {words::date_long(lesson->lesson.date.value, say), say.say("held.health.pain")});
    return part;
}

} // namespace

std::optional<record::Date> due_after(const Academy& academy, const people::Person& person,
                                      std::optional<record::Date> last) {
    if (person.kept_until) return person.kept_until;
    if (!academy.house || !academy.house->kept_months) return std::nullopt;
    const std::chrono::months kept(*academy.house->kept_months);
    if (!last) return person.agreed ? std::optional(*person.agreed + kept) : std::nullopt;
    const record::Date due = *last + kept;
    return due.ok() ? due : record::Date{due.year() / due.month() / std::chrono::last};
}

std::optional<record::Date> due_of(const Academy& academy, const people::Person& person,
                                   const Lessons& lessons) {
    std::optional<record::Date> last;
    for (const auto& lesson : lessons)
        if (lesson->lesson.date.value.ok()) last = lesson->lesson.date.value;
    return due_after(academy, person, last);
}

std::string language_of(const Academy& academy, const people::Person& person) {
    if (person.language) return *person.language;
    return academy.house && academy.house->language ? *academy.house->language : "en-GB";
}

theme::Theme theme_of(const Workshop& workshop, const Academy& academy,
                      const people::Person& person) {
    record::Paper paper = record::Paper::a4;
    bool large = false;
    if (academy.house) paper = academy.house->paper.value_or(paper);
    if (academy.house) large = academy.house->large_print.value_or(large);
    paper = person.paper.value_or(paper);
    large = person.large_print.value_or(large);
    return theme::theme_of(workshop.style(),
                           paper == record::Paper::letter ? theme::Paper::letter
                           : paper == record::Paper::a5   ? theme::Paper::a5
                                                          : theme::Paper::a4,
                           large);
}

std::vector<fs::path> terms_of(const fs::path& folder, std::string_view code) {
    std::vector<fs::path> out;
    for (const fs::path& path : files_below(folder, {".yaml", ".yml"})) {
        const auto text = text_of(path);
        if (!text || !is_term(*text)) continue;
        const diag::Source source(path.string(), *text);
        diag::Findings unsaid; // 'check' tells them
        const record::Term term = record::read_term(source, unsaid);
        if (std::ranges::any_of(term.students,
                                [&](const auto& student) { return student.code.value == code; }))
            out.push_back(path.lexically_relative(folder));
    }
    return out;
}

report::Held held_of(const Academy& academy, const people::Person& person, const Lessons& lessons,
                     const std::vector<fs::path>& terms, const words::Speaker& say) {
    report::Held held{say.say("held.title", {{"name", person.full_name()}}), {}};
    held.parts.push_back(person_part(academy, person, say));
    held.parts.back().rows.push_back(
        {say.say("held.until"), until_words(academy, person, lessons, say)});
    report::HeldPart list{say.say("held.lessons"), {}};
    for (const auto& lesson : lessons)
        list.rows.push_back(
            {words::date_long(lesson->lesson.date.value, say), lesson_words(*lesson, say)});
    if (list.rows.empty()) list.rows.push_back({"", say.say("held.no-lessons")});
    held.parts.push_back(std::move(list));
    if (!terms.empty()) {
        report::HeldPart registers{say.say("held.terms"), {}};
        for (const fs::path& path : terms)
            registers.rows.push_back({"", path.generic_string()});
        held.parts.push_back(std::move(registers));
    }
    report::HeldPart health = health_part(lessons, say);
    const bool pain = !health.rows.empty();
    if (pain) held.parts.push_back(std::move(health));
    held.parts.push_back(
        {say.say("held.not"), {{"", say.say(pain ? "held.not.more" : "held.not.words")}}});
    const auto& house = academy.house;
    std::string contact;
    if (house)
        for (const record::Coach& coach : house->coaches)
            if (contact.empty() ||
                (!person.coach.empty() && coach.name.find(person.coach) != std::string::npos))
                contact = joined({coach.name, coach.contact});
    if (!contact.empty())
        held.parts.push_back(
            {say.say("held.rights"), {{"", say.say("held.rights.words", {{"contact", contact}})}}});
    return held;
}

} // namespace cli
