#include "page/expect_page.hpp"

#include "page/log_notes.hpp"

#include <initializer_list>

namespace page {

using figure::Easel;
using theme::Text;

namespace {

/// One paragraph out of several sentences.
Note sentences(const Easel& easel, std::initializer_list<const char*> keys, std::string head = {},
               Text style = Text::body) {
    Note note{std::move(head), {}, style};
    for (const char* key : keys)
        note.text += (note.text.empty() ? "" : " ") + easel.words.say(key);
    return note;
}

NoteGroup what_may_happen(const Easel& easel, const Story& story) {
    NoteGroup group{easel.words.say("expect.title"), {}, false};
    if (story.lesson.student.age == record::Age::junior) {
        group.notes = {sentences(easel, {"expect.junior", "expect.small-doses"}),
                       sentences(easel, {"drill.missed"})};
        return group;
    }
    group.notes = {sentences(easel, {"expect.strange", "expect.experience"}),
                   sentences(easel, {"expect.dip", "expect.today"}),
                   sentences(easel, {"expect.small-doses", "drill.missed"}),
                   sentences(easel, {"expect.look-less", "expect.call"}),
                   sentences(easel, {"expect.when-to-call"})};
    return group;
}

NoteGroup if_it_goes_wrong(const Easel& easel, const Story& story) {
    NoteGroup group{easel.words.say("expect.repair.title"), {}, false};
    for (const ChosenDrill& chosen : story.drills)
        if (!chosen.drill.repair.empty())
            group.notes.push_back({chosen.drill.name + ".", chosen.drill.repair, Text::body});
    group.notes.push_back(sentences(easel, {"expect.fall-back"}));
    return group;
}

NoteGroup when_to_stop(const Easel& easel, bool junior) {
    NoteGroup group{easel.words.say("expect.worry.title"), {}, true};
    if (junior) group.notes.push_back(sentences(easel, {"expect.stop.junior"}));
    group.notes.push_back(
        sentences(easel, {"caution.stop", "caution.stop.doctor", "caution.not-medical"}));
    return group;
}

} // namespace

NoteGroup cautions(const Easel& easel, bool junior, Text style) {
    const auto head = [&](const char* key) { return easel.words.say(key); };
    NoteGroup group{head("caution.title"), {}, false};
    const auto add = [&](std::initializer_list<const char*> keys, const char* title) {
        group.notes.push_back(sentences(easel, keys, title ? head(title) : std::string(), style));
    };
    add({"caution.space", "caution.space.clear"}, "caution.space.head");
    add({"caution.warm-up", "caution.warm-up.still"}, "caution.warm-up.head");
    if (junior)
        add({"caution.junior", "caution.junior.listen", "caution.junior.balls"},
            "caution.junior.head");
    add({"caution.range", "caution.range.forward", "caution.range.warning", "caution.range.backs"},
        "caution.range.head");
    add({"caution.indoors", "caution.indoors.lift", "caution.net"}, "caution.indoors.head");
    if (junior) // who have no stages
        add({"caution.slow", "caution.hand", "caution.hand.tell"}, "drillpage.hand-head");
    else
        add({"caution.slow", "caution.hand", "caution.hand.tell", "caution.stages"},
            "drillpage.hand-head");
    add({junior ? "caution.speed.junior" : "caution.speed", "caution.path", "caution.rules"},
        nullptr);
    return group;
}

Section expect_page(const Easel& easel, const Story& story) {
    Section section;
    section.name = "expect";
    section.title = easel.words.say("page.expect.question");
    const bool junior = story.lesson.student.age == record::Age::junior;
    std::vector<NoteGroup> over;
    if (!story.lesson.comment.empty())
        over.push_back(
            {easel.words.say("coach.comment"), {{{}, story.lesson.comment, Text::coach}}, false});
    section.blocks =
        page_of_notes(easel, section.title, over,
                      {what_may_happen(easel, story), when_to_stop(easel, junior),
                       if_it_goes_wrong(easel, story)},
                      {cautions(easel, junior, Text::body)}, easel.words.say("notes.questions"));
    return section;
}

} // namespace page
