#include "page/drill_notes.hpp"

#include "page/drill_loop.hpp"
#include "page/verdict.hpp"
#include "words/date.hpp"
#include "words/side.hpp"

#include <algorithm>

namespace page {

using figure::Easel;
using theme::Text;

NoteGroup what_came_back(const Easel& easel, const Story& story) {
    NoteGroup group{easel.words.say("drillpage.returned"), {}, false};
    std::string told;
    for (const auto& line : came_back(story, easel.words))
        told += (told.empty() ? "" : "\n") + line;
    if (!told.empty()) group.notes.push_back({{}, told, Text::body});
    for (const auto& back : story.lesson.returned)
        if (!back.words.empty())
            group.notes.push_back(
                {{}, easel.words.say("one.goal-says", {{"words", back.words}}), Text::body});
    return group;
}

namespace {

/// The measure whose cold shots are told: the aim, else the first that has any.
const Evidence* shown_cold(const Story& story) {
    const auto has = [](const Evidence& e) { return e.cold_sample && e.cold_sample->count > 0; };
    const auto found = std::ranges::find_if(story.evidence, has);
    return found == story.evidence.end() ? nullptr : &*found;
}

} // namespace

NoteGroup cold_tests(const Easel& easel, const Story& story) {
    const auto& w = easel.words;
    NoteGroup group{w.say("history.cold-tests"), {}, false};
    const Evidence* aim = shown_cold(story);
    const bool boxes = std::ranges::any_of(
        story.lesson.returned, [](const record::Returned& back) { return back.cold.has_value(); });
    if (const std::string told = kept_words(story, w); !told.empty()) {
        group.notes.push_back({kept_head(story, w), told, Text::body});
    } else if (aim && aim->cold_sample && aim->cold_sample->count > 0) {
        group.notes.push_back(
            {{},
             w.say("kept.text",
                   {{"n", aim->cold_sample->count},
                    {"date", words::date_long(story.lesson.date.value, w)},
                    {"noun", w.say("noun." + key_of(aim->measure))},
                    {"value", words::side(aim->measure, aim->cold_sample->median, w)}}),
             Text::body});
        if (const std::string why = other_club_words(story, w); !why.empty())
            group.notes.push_back({{}, why, Text::body});
    } else if (!boxes) {
        group.notes.push_back({{}, w.say("history.cold-none"), Text::body});
    }
    if (const auto date = story.lesson.cold_test ? story.lesson.cold_test : story.lesson.next)
        group.notes.push_back(
            {{}, w.say("drillpage.next-cold", {{"date", words::date_long(*date, w)}}), Text::body});
    return group;
}

} // namespace page
