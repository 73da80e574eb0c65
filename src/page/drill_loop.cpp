#include "page/drill_loop.hpp"

#include "page/verdict.hpp"
#include "words/date.hpp"
#include "words/number.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace page {

namespace {

using drills::Step;

std::string kept_key(measure::Kept kept) {
    constexpr std::array<const char*, 6> keys{"kept.kept",       "kept.partly",
                                              "kept.not-yet",    "kept.cannot-tell",
                                              "kept.first-look", "verdict.past-square"};
    return keys[static_cast<std::size_t>(kept)];
}

const Evidence* cold_evidence(const Story& story) {
    for (const auto& e : story.evidence)
        if (e.retention && e.cold_sample && e.cold_sample->count > 0) return &e;
    return nullptr;
}

long percent(double part) { return std::lround(100 * part); }

/// How much was still there: never more than all, never less than none.
std::string part_words(const measure::Retention& r, const words::Speaker& w) {
    if (percent(r.part) >= 100) return w.say("loop.part.all");
    if (percent(r.part) <= 0) return w.say("loop.part.none");
    return w.say("kept.part", {{"percent", percent(r.part)}});
}

std::string range_words(const measure::Interval& range, const words::Speaker& w) {
    const long lower = percent(range.lower), upper = percent(range.upper);
    if (upper <= 0 || lower >= 100 || (lower <= 0 && upper >= 100)) return {};
    if (lower <= 0) return w.say("loop.part.at-most", {{"upper", upper}});
    if (upper >= 100) return w.say("loop.part.at-least", {{"lower", lower}});
    return w.say("kept.part-range", {{"lower", lower}, {"upper", upper}});
}

/// A part that is not a number has no place on paper, and more than all of it is no praise.
bool tellable(const measure::Retention& r) {
    return r.range && std::isfinite(r.part) && r.kept != measure::Kept::first_look &&
           r.kept != measure::Kept::past;
}

/// Whether today's drills are what the rule says of this one.
bool follows(const Story& story, const BackDrill& back) {
    if (!back.next) return false;
    const auto& next = *back.next;
    if (next.step == Step::finished)
        return std::ranges::none_of(
            story.drills, [&](const ChosenDrill& d) { return d.drill.id == next.homework.drill; });
    return std::ranges::any_of(story.drills, [&](const ChosenDrill& d) {
        return d.drill.id == next.homework.drill && d.stage == next.homework.stage;
    });
}

std::string joined(const std::vector<std::string>& sentences) {
    std::string out;
    for (const auto& s : sentences)
        if (!s.empty()) out += (out.empty() ? "" : " ") + s;
    return out;
}

std::string passed_words(const BackDrill& back, const words::Speaker& w) {
    const auto& passed = back.outcome.passed;
    return passed ? w.say(*passed ? "loop.passed" : "loop.not-passed") : std::string();
}

std::string days_words(const BackDrill& back, const words::Speaker& w) {
    const auto& days = back.outcome.days_done;
    return days ? w.say("loop.done", {{"n", *days}}) : std::string();
}

/// Days and pass mark; behind the drill's name where two came back.
std::string done_words(const LastTime& last, const BackDrill& back, const words::Speaker& w) {
    const std::string told = joined({days_words(back, w), passed_words(back, w)});
    if (told.empty() || last.drills.size() < 2 || back.name.empty()) return told;
    return w.say("join.colon", {{"first", back.name}, {"second", told}});
}

std::optional<bool> kept_by_boxes(const LastTime& last) {
    for (const auto& drill : last.drills)
        if (drill.outcome.kept) return drill.outcome.kept;
    return std::nullopt;
}

/// The lines of one drill that came back.
void add_drill(std::vector<std::string>& out, const Story& story, const BackDrill& drill,
               const words::Speaker& w) {
    if (drill.set)
        out.push_back(w.say("loop.drill",
                            {{"name", drill.name}, {"stage", stage_words(w, drill.set->stage)}}));
    const auto add = [&](std::string line) {
        if (!line.empty()) out.push_back(std::move(line));
    };
    const auto tally = [&](const char* key, const std::optional<record::Tally>& t) {
        return t ? w.say(key, {{"n", t->right}, {"of", t->of}}) : std::string();
    };
    add(days_words(drill, w));
    add(joined({tally("loop.right", drill.back.right), passed_words(drill, w)}));
    add(tally("loop.called", drill.back.called));
    add(tally("loop.cold", drill.back.cold));
    if (follows(story, drill))
        add(w.say(step_key(drill.next->step),
                  {{"name", drill.name}, {"stage", stage_words(w, drill.next->homework.stage)}}));
}

} // namespace

std::string step_key(Step step) {
    constexpr std::array<const char*, 9> keys{"loop.promote",   "loop.finished", "loop.test",
                                              "loop.new-place", "loop.again",    "loop.easier",
                                              "loop.plan",      "loop.count",    "loop.less"};
    return keys[static_cast<std::size_t>(step)];
}

std::string stage_words(const words::Speaker& words, unit::Stage stage) {
    constexpr std::array<const char*, 3> keys{"drill.stage.a", "drill.stage.b", "drill.stage.c"};
    return words.say(keys[static_cast<std::size_t>(stage)]);
}

std::string kept_head(const Story& story, const words::Speaker& words) {
    const Evidence* e = cold_evidence(story);
    return e ? words.say(kept_key(e->retention->kept) + ".head", {{"measure", key_of(e->measure)}})
             : std::string();
}

std::string kept_words(const Story& story, const words::Speaker& w) {
    const Evidence* e = cold_evidence(story);
    if (!e) return {};
    std::vector<std::string> out{
        w.say("kept.text", {{"n", e->cold_sample->count},
                            {"date", words::date_long(story.lesson.date.value, w)},
                            {"noun", w.say("noun." + key_of(e->measure))},
                            {"value", words::side(e->measure, e->cold_sample->median, w)}}),
        w.say(kept_key(e->retention->kept) + ".text")};
    if (e->retention->kept == measure::Kept::past) out.push_back(w.say("verdict.past-square.calm"));
    if (tellable(*e->retention)) {
        out.push_back(part_words(*e->retention, w));
        out.push_back(range_words(*e->retention->range, w));
    }
    return joined(out);
}

std::string other_club_words(const Story& story, const words::Speaker& w) {
    if (!story.last || story.last->other_clubs.size() < 2) return {};
    const auto& clubs = story.last->other_clubs;
    return w.say("kept.other-club", {{"before", clubs[0]}, {"after", clubs[1]}});
}

std::string since_last_time(const Story& story, const words::Speaker& w) {
    if (!story.last) return {};
    const auto& last = *story.last;
    std::vector<std::string> out;
    if (!last.planned.empty()) out.push_back(w.say("loop.planned", {{"words", last.planned}}));
    for (const auto& drill : last.drills)
        out.push_back(done_words(last, drill, w));
    if (const Evidence* e = cold_evidence(story)) {
        out.push_back(w.say("loop.cold-shots"));
        out.push_back(kept_head(story, w));
        if (tellable(*e->retention)) out.push_back(part_words(*e->retention, w));
    } else if (const auto told = other_club_words(story, w); !told.empty()) {
        out.push_back(w.say("loop.cold-shots"));
        out.push_back(told);
    } else if (const auto kept = kept_by_boxes(last)) {
        out.push_back(w.say(*kept ? "kept.kept.head" : "kept.not-yet.head"));
    }
    return joined(out);
}

std::vector<std::string> came_back(const Story& story, const words::Speaker& w) {
    std::vector<std::string> out;
    if (!story.last) return out;
    if (!story.last->planned.empty())
        out.push_back(w.say("loop.planned", {{"words", story.last->planned}}));
    for (const auto& drill : story.last->drills)
        add_drill(out, story, drill, w);
    return out;
}

std::string cold_answer(const Story& story, const words::Speaker& w) {
    if (!story.last) return {};
    std::vector<std::string> out;
    for (const auto& drill : story.last->drills)
        if (const auto& cold = drill.back.cold)
            out.push_back(w.say("loop.last-cold", {{"n", cold->right}, {"of", cold->of}}));
    if (const auto head = kept_head(story, w); !head.empty()) {
        if (out.empty()) out.push_back(w.say("loop.last-cold-shots"));
        out.push_back(head);
    }
    return joined(out);
}

} // namespace page
