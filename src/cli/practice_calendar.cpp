#include "cli/practice_calendar.hpp"

#include "output/calendar.hpp"
#include "words/date.hpp"

#include <algorithm>

namespace cli {

namespace {

using std::chrono::days;
using std::chrono::sys_days;

std::string joined_names(const page::Story& story) {
    std::string out;
    for (const auto& chosen : story.drills)
        out += (out.empty() ? "" : ", ") + chosen.drill.name;
    return out;
}

/// The same from one printing to the next, different from lesson to lesson.
std::string uid(const record::Lesson& lesson, const std::string& what) {
    std::string out;
    for (const char c :
         lesson.student.code + "-" + words::date_iso(lesson.date.value) + "-" + what) {
        const bool plain =
            (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || c == '-';
        out += plain ? c : '-';
    }
    return out + "@lessonleaf.invalid"; // RFC 2606: a name that belongs to nobody
}

output::DayEvent practice(const page::Story& story, const page::ChosenDrill& chosen,
                          const words::Speaker& w, sys_days last) {
    const auto& lesson = story.lesson;
    const bool junior = lesson.student.age == record::Age::junior;
    output::DayEvent event;
    event.uid = uid(lesson, chosen.drill.id);
    event.summary =
        w.say("calendar.drill", {{"name", chosen.drill.name}, {"n", chosen.drill.minutes}});
    const auto& dose = chosen.wish.dose.empty() ? chosen.drill.dose : chosen.wish.dose;
    const auto& cue = chosen.wish.cue.empty() ? chosen.drill.cue : chosen.wish.cue;
    event.description = w.say("calendar.drill.note", {{"dose", dose}, {"cue", cue}}) + "\n" +
                        w.say("drill.stop.text");
    event.first = sys_days(lesson.date.value) + days(1);
    event.every = junior ? 2 : 1;
    const int span = static_cast<int>((last - sys_days(event.first)).count()) + 1;
    event.days = std::max(1, (span + event.every - 1) / event.every);
    return event;
}

} // namespace

std::string practice_calendar(const Sheet& sheet) {
    const auto& story = sheet.story();
    const auto& lesson = story.lesson;
    const auto& w = sheet.easel().words;
    const sys_days today(lesson.date.value);
    const auto test = lesson.cold_test ? lesson.cold_test : lesson.next;
    sys_days last = today + days(lesson.log_days);
    if (test) last = std::min(last, sys_days(*test) - days(1));
    std::vector<output::DayEvent> events;
    if (last > today)
        for (const auto& chosen : story.drills)
            events.push_back(practice(story, chosen, w, last));
    if (test && !story.drills.empty())
        events.push_back({uid(lesson, "cold-test"),
                          w.say("calendar.cold", {{"name", story.drills.front().drill.name}}),
                          w.say("cold.no-thought"), *test});
    if (lesson.next)
        events.push_back({uid(lesson, "next-lesson"), w.say("calendar.lesson"), {}, *lesson.next});
    return output::calendar(events, lesson.date.value,
                            w.say("calendar.name", {{"name", joined_names(story)}}),
                            lesson.language);
}

} // namespace cli
