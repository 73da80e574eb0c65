#include "page/verdict.hpp"

#include "words/date.hpp"
#include "words/side.hpp"

#include <cmath>

namespace page {

namespace {

using measure::Verdict;

std::string typical(const Evidence& aim, const words::Speaker& words) {
    const auto& c = aim.change;
    if (c.before.count > 0 && c.after.count > 0)
        return words.say("verdict.typical",
                         {{"noun", words.say("noun." + key_of(aim.measure))},
                          {"before", words::side(aim.measure, c.before.median, words)},
                          {"after", words::side(aim.measure, c.after.median, words)}});
    const auto& one = c.before.count > 0 ? c.before : c.after;
    return words.say("verdict.typical-one",
                     {{"noun", words.say("noun." + key_of(aim.measure))},
                      {"value", words::side(aim.measure, one.median, words)}});
}

std::string worth(const Story& story, const Evidence& aim, const words::Speaker& words) {
    return words::quantity(aim.measure, story.lesson.aim ? story.lesson.aim->worth_having : 1,
                           words);
}

/// How many later shots came nearer; where the middle earlier shot was in the wanted range already,
/// how many were inside it.
std::string counts(const Story& story, const Evidence& aim, const words::Speaker& words) {
    const auto& c = aim.change;
    const auto& wanted = *story.lesson.aim;
    if (c.before.median >= wanted.least && c.before.median <= wanted.most)
        return words.say("count.inside", {{"before", c.inside_before},
                                          {"n", c.before.count},
                                          {"after", c.inside_after},
                                          {"m", c.after.count}});
    return words.say("count." + key_of(aim.measure), {{"n", c.nearer}, {"of", c.after.count}});
}

/// Why two blocks are not compared.
std::string reason(const Story& story, const words::Speaker& words) {
    const auto& set_up = story.lesson.conditions;
    if (!set_up.why_not.empty()) return set_up.why_not;
    const auto clubs =
        story.table ? shots::clubs_compared(*story.table) : std::vector<std::string>{};
    if (clubs.size() > 1)
        return words.say("evidence.why-not.club", {{"before", clubs[0]}, {"after", clubs[1]}});
    return words.say("evidence.why-not.set-up");
}

std::vector<std::string> remarks(const Story& story, const Evidence& aim,
                                 const words::Speaker& words) {
    const auto& c = aim.change;
    const std::size_t n = std::min(c.before.count, c.after.count);
    switch (c.verdict) {
    case Verdict::changed:
        return {words.say("verdict.changed.text")};
    case Verdict::probably:
        if (story.lesson.next)
            return {words.say("verdict.probably.text-date",
                              {{"n", n}, {"date", words::date_long(*story.lesson.next, words)}})};
        return {words.say("verdict.probably.text", {{"n", n}})};
    case Verdict::cannot_tell: {
        if (c.at_home) return {words.say("verdict.cannot-tell.at-home")};
        std::vector<std::string> out{words.say(
            "verdict.cannot-tell.text",
            {{"spread", words::quantity(aim.measure, c.pooled_spread, words)}, {"n", n}})};
        if (c.shots_that_would_tell)
            out.push_back(words.say("verdict.cannot-tell.more", {{"n", *c.shots_that_would_tell}}));
        return out;
    }
    case Verdict::other_way:
        return {words.say("verdict.other-way.text"), words.say("verdict.other-way.calm")};
    case Verdict::past_square:
        return {words.say("verdict.past-square.text"), words.say("verdict.past-square.calm")};
    case Verdict::about_same:
        return {words.say("verdict.about-same.text", {{"worth", worth(story, aim, words)}})};
    case Verdict::first_look:
        return {words.say("verdict.first-look.text", {{"n", c.before.count + c.after.count}})};
    case Verdict::tighter:
        return {words.say("verdict.tighter.text")};
    case Verdict::not_comparable:
        return {words.say("verdict.not-comparable.text", {{"reason", reason(story, words)}})};
    case Verdict::not_judged:
        return {words.say("evidence.why-not.not-named")};
    }
    return {};
}

} // namespace

std::string key_of(unit::Measure measure) {
    std::string key(unit::row(measure).key);
    for (char& c : key)
        if (c == ' ') c = '-';
    return key;
}

std::string verdict_key(Verdict verdict) {
    switch (verdict) {
    case Verdict::changed:
        return "changed";
    case Verdict::probably:
        return "probably";
    case Verdict::cannot_tell:
        return "cannot-tell";
    case Verdict::other_way:
        return "other-way";
    case Verdict::past_square:
        return "past-square";
    case Verdict::about_same:
        return "about-same";
    case Verdict::first_look:
        return "first-look";
    case Verdict::tighter:
        return "tighter";
    case Verdict::not_comparable:
        return "not-comparable";
    case Verdict::not_judged:
        return "not-judged";
    }
    return {};
}

bool has_typical(const measure::Sample& sample) {
    return sample.count >= measure::shots_for_typical;
}

const Evidence* aim_of(const Story& story) {
    if (story.evidence.empty() || !story.evidence.front().is_aim) return nullptr;
    return &story.evidence.front();
}

VerdictWords verdict_words(const Story& story, const Evidence& aim, const words::Speaker& words) {
    VerdictWords out;
    out.head = words.say("verdict." + verdict_key(aim.change.verdict) + ".head",
                         {{"measure", key_of(aim.measure)}});
    const auto& c = aim.change;
    const auto told = [](const measure::Sample& s) { return s.count == 0 || has_typical(s); };
    if (told(c.before) && told(c.after)) out.sentences.push_back(typical(aim, words));
    const bool counted = aim.change.before.count >= 5 && aim.change.after.count >= 5 &&
                         aim.change.verdict != Verdict::not_comparable &&
                         aim.change.verdict != Verdict::not_judged;
    if (counted) out.sentences.push_back(counts(story, aim, words));
    for (auto& remark : remarks(story, aim, words))
        out.sentences.push_back(std::move(remark));
    if (aim.change.already_moving) out.sentences.push_back(words.say("verdict.already-moving"));
    return out;
}

} // namespace page
