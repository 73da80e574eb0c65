#include "page/caution_notes.hpp"

#include "words/number.hpp"
#include "words/side.hpp"

namespace page {

using figure::Easel;
using theme::Text;

NoteGroup stop_box(const Easel& easel) {
    return {easel.words.say("expect.worry.title"),
            {{{},
              easel.words.say("caution.stop") + " " + easel.words.say("caution.stop.doctor") + " " +
                  easel.words.say("caution.not-medical"),
              Text::body}},
            true};
}

NoteGroup rules_of_words(const Easel& easel, Text style) {
    NoteGroup group{easel.words.say("drillpage.read.title"), {}, false};
    const auto say = [&](const char* key, const char* head) {
        group.notes.push_back({easel.words.say(head), easel.words.say(key), style});
    };
    say("drillpage.read.changed", "verdict.changed.head");
    say("drillpage.read.probably", "verdict.probably.head");
    say("drillpage.read.cannot-tell", "verdict.cannot-tell.head");
    group.notes.push_back(
        {{},
         easel.words.say(
             "evidence.threshold",
             {{"x", words::fixed(words::square_within_degrees, 1, easel.words.language()) + "°"}}) +
             " " + easel.words.say("caution.measured") + " " +
             easel.words.say("caution.measured.shots"),
         style});
    return group;
}

} // namespace page
