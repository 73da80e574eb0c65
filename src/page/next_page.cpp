#include "page/next_page.hpp"

#include "page/caution_notes.hpp"
#include "page/drill_loop.hpp"
#include "page/drill_notes.hpp"
#include "page/log_notes.hpp"
#include "page/verdict.hpp"
#include "words/date.hpp"
#include "words/side.hpp"

#include <algorithm>

namespace page {

using figure::Easel;
using theme::Text;

namespace {

NoteGroup lessons_so_far(const Easel& easel, const Story& story) {
    const record::Lesson& lesson = story.lesson;
    NoteGroup group{easel.words.say("history.lessons"), {}, false};
    for (const auto& line : lesson.history)
        group.notes.push_back(
            {line.date ? words::date_long(*line.date, easel.words) : std::string(), line.text,
             Text::coach});
    if (group.notes.empty() && story.last) // linked lessons stand for a history that nobody typed
        for (const auto& line : story.last->lessons)
            group.notes.push_back(
                {words::date_long(*line.date, easel.words), line.text, Text::coach});
    if (group.notes.empty())
        group.notes.push_back(
            {{},
             easel.words.say(lesson.number.value_or(1) > 1 ? "history.unlinked" : "history.none"),
             Text::body});
    return group;
}

NoteGroup for_the_next_coach(const Easel& easel, const Story& story) {
    const auto& w = easel.words;
    NoteGroup group{w.say("coach.next.title"), {}, true};
    std::string state;
    if (const auto& aim = story.lesson.aim)
        state = w.say("coach.next.aim",
                      {{"measure", w.say("measure." + key_of(aim->measure.value))},
                       {"range", words::side_range(aim->measure.value, aim->least, aim->most, w)}});
    if (const Evidence* aim = aim_of(story))
        state +=
            (state.empty() ? "" : "\n") +
            w.say("coach.next.verdict",
                  {{"verdict", w.say("verdict." + verdict_key(aim->change.verdict) + ".word")}});
    for (std::size_t i = 0; i < story.drills.size(); ++i)
        state += (state.empty() ? "" : "\n") +
                 w.say("one.drill-reference", {{"n", i + 1}, {"name", story.drills[i].drill.name}});
    if (!state.empty()) group.notes.push_back({w.say("coach.next.state") + ".", state, Text::body});
    for (const auto& note : story.lesson.notes)
        group.notes.push_back({{}, note, Text::coach});
    if (story.lesson.notes.empty())
        group.notes.push_back({{}, w.say("coach.next.none"), Text::body});
    return group;
}

/// Short list of words; those of measures only where the sheet shows them.
NoteGroup words_used(const Easel& easel, const Story& story) {
    NoteGroup group{easel.words.say("notes.words"), {}, false};
    const auto add = [&](const char* key) {
        const std::string line = easel.words.say(key);
        const std::size_t colon = std::min(line.find(": "), line.size());
        if (colon == line.size())
            group.notes.push_back({{}, line, Text::caption});
        else
            group.notes.push_back(
                {line.substr(0, colon + 1), line.substr(colon + 2), Text::caption});
    };
    const auto shown = [&](unit::Measure m) {
        for (const auto& e : story.evidence)
            if (e.measure == m) return true;
        return false;
    };
    for (const char* key : {"word.lead-hand", "word.trail-hand", "word.heel-pad", "word.knuckles",
                            "word.v", "word.face", "word.open", "word.closed", "word.square"})
        add(key);
    if (shown(unit::Measure::path)) add("word.path"), add("word.in-to-out"), add("word.out-to-in");
    if (shown(unit::Measure::loft)) add("word.effective-loft");
    if (shown(unit::Measure::start)) add("word.start");
    if (shown(unit::Measure::carry)) add("word.carry");
    add("word.cold-test");
    if (!story.evidence.empty()) add("word.set-aside");
    return group;
}

/// The rule behind the verdict words, for a sheet that has shots.
NoteGroup how_to_read(const Easel& easel, const Story& story) {
    if (story.evidence.empty() || is_junior(story)) return {};
    return rules_of_words(easel, Text::caption);
}

} // namespace

Section next_page(const Easel& easel, const Story& story) {
    Section section;
    section.name = "next";
    section.title = easel.words.say("page.history.question");
    std::vector<NoteGroup> left{lessons_so_far(easel, story), what_came_back(easel, story),
                                cold_tests(easel, story), for_the_next_coach(easel, story)};
    const auto set = [&] {
        section.blocks = page_of_notes(easel, section.title, {}, left, {words_used(easel, story)},
                                       easel.words.say("notes.blank"));
    };
    left.push_back(how_to_read(easel, story));
    set();
    const bool whole = total_height(section.blocks) <= easel.theme.live(true).height;
    if (whole && section.blocks.back().name == "lines") return section;
    left.pop_back(); // the rule stands under the shots as well: room for notes goes before it
    set();
    return section;
}

} // namespace page
