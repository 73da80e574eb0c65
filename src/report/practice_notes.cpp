#include "report/practice_notes.hpp"

#include "page/drill_facts.hpp"
#include "page/drill_loop.hpp"

namespace report {

namespace {

using Library = std::vector<drills::Drill>;

/// "H1 Lay and close and H4 No-gap test".
std::string named(const std::vector<std::string>& ids, const Library& library) {
    std::string out;
    for (std::size_t i = 0; i < ids.size(); ++i) {
        const auto* drill = drills::find(library, ids[i]);
        if (i > 0) out += i + 1 == ids.size() ? " and " : ", ";
        out += ids[i] + (drill ? " '" + drill->name + "'" : "");
    }
    return out;
}

diag::Finding note(const record::Lesson& lesson, std::string what, std::string hint) {
    const auto span = lesson.drills.empty() ? lesson.date.span : lesson.drills.front().id.span;
    return {diag::Severity::note, {span.source, 0, 0, 1}, std::move(what), std::move(hint)};
}

} // namespace

std::vector<diag::Finding> practice_notes(const page::Story& story, const words::Speaker& words,
                                          const Library& library) {
    std::vector<diag::Finding> out;
    const auto& lesson = story.lesson;
    const bool chosen = !lesson.drills.empty();
    if (lesson.pain) {
        out.push_back(note(lesson, "'pain: yes' is written: the program proposes no drill",
                           chosen
                               ? "the drills you named stay; nothing of this is printed"
                               : "name one yourself if you want one; nothing of this is printed"));
        return out;
    }
    for (const auto& drill : page::came_back_of(story)) {
        if (!drill.next) continue;
        const auto& next = *drill.next;
        out.push_back(note(
            lesson,
            "by the repeat rule: " +
                words.say(page::step_key(next.step),
                          {{"name", drill.name},
                           {"stage", page::stage_words(words, next.homework.stage)}}),
            !drill.goes_on()
                ? "the rules for what was seen today choose the next drill"
                : named({next.homework.drill}, library) +
                      (chosen ? ", if you want it: what you named is printed" : " is printed")));
    }
    const auto& p = story.proposal;
    if (!p.ids.empty())
        out.push_back(note(
            lesson,
            std::string(chosen ? "the rules would take " : "the rules take ") +
                named(p.ids, library) + ": " + page::proposal_reason(words, story, p.reason),
            chosen
                ? "your own choice is printed"
                : "name others in 'drills' if you want them: 'drills: [" + p.ids.front() + "]'"));
    if (!p.next.empty())
        out.push_back(note(lesson, "next in line: " + named(p.next, library),
                           "for you to look at; not printed"));
    return out;
}

} // namespace report
