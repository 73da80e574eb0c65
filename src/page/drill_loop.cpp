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
    constexpr std::array<const char*, 5> keys{"kept.kept", "kept.partly", "kept.not-yet",
                                              "kept.cannot-tell", "kept.first-look"};
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
    if (lower <= 0 && upper >= 100) return {};
    if (lower <= 0) return w.say("loop.part.at-most", {{"upper", std::max(upper, 0L)}});
    if (upper >= 100) return w.say("loop.part.at-least", {{"lower", std::min(lower, 100L)}});
    return w.say("kept.part-range", {{"lower", lower}, {"upper", upper}});
}

/// A part that is not a number has no place on paper.
bool tellable(const measure::Retention& r) {
    return r.range && std::isfinite(r.part) && r.kept != measure::Kept::first_look;
}

/// Whether today's drills are what the rule says.
bool follows(const Story& story) {
    if (!story.last || !story.last->next) return false;
    const auto& next = *story.last->next;
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

std::string passed_words(const Story& story, const words::Speaker& w) {
    const auto& passed = story.last->outcome.passed;
    return passed ? w.say(*passed ? "loop.passed" : "loop.not-passed") : std::string();
}

} // namespace

std::string step_key(Step step) {
    constexpr std::array<const char*, 8> keys{"loop.promote",   "loop.finished", "loop.test",
                                              "loop.new-place", "loop.again",    "loop.easier",
                                              "loop.plan",      "loop.count"};
    return keys[static_cast<std::size_t>(step)];
}

std::string stage_words(const words::Speaker& words, unit::Stage stage) {
    constexpr std::array<const char*, 3> keys{"drill.stage.a", "drill.stage.b", "drill.stage.c"};
    return words.say(keys[static_cast<std::size_t>(stage)]);
}

std::string kept_head(const Story& story, const words::Speaker& words) {
    const Evidence* e = cold_evidence(story);
    return e ? words.say(kept_key(e->retention->kept) + ".head") : std::string();
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
    if (tellable(*e->retention)) {
        out.push_back(part_words(*e->retention, w));
        out.push_back(range_words(*e->retention->range, w));
    }
    return joined(out);
}

std::string since_last_time(const Story& story, const words::Speaker& w) {
    if (!story.last) return {};
    const auto& last = *story.last;
    std::vector<std::string> out;
    if (!last.planned.empty()) out.push_back(w.say("loop.planned", {{"words", last.planned}}));
    if (last.outcome.days_done) out.push_back(w.say("loop.done", {{"n", *last.outcome.days_done}}));
    out.push_back(passed_words(story, w));
    if (const Evidence* e = cold_evidence(story)) {
        out.push_back(kept_head(story, w));
        if (tellable(*e->retention)) out.push_back(part_words(*e->retention, w));
    } else if (last.outcome.kept) {
        out.push_back(w.say(*last.outcome.kept ? "kept.kept.head" : "kept.not-yet.head"));
    }
    return joined(out);
}

std::vector<std::string> came_back(const Story& story, const words::Speaker& w) {
    std::vector<std::string> out;
    if (!story.last) return out;
    const auto& last = *story.last;
    if (last.set && !last.drill_name.empty())
        out.push_back(w.say(
            "loop.drill", {{"name", last.drill_name}, {"stage", stage_words(w, last.set->stage)}}));
    if (!last.planned.empty()) out.push_back(w.say("loop.planned", {{"words", last.planned}}));
    if (!story.lesson.returned) return out;
    const auto& back = *story.lesson.returned;
    if (back.days_done) out.push_back(w.say("loop.done", {{"n", *back.days_done}}));
    const auto tally = [&](const char* key, const std::optional<record::Tally>& t) {
        if (t) out.push_back(w.say(key, {{"n", t->right}, {"of", t->of}}));
    };
    std::string line;
    if (back.right) line = w.say("loop.right", {{"n", back.right->right}, {"of", back.right->of}});
    line = joined({line, passed_words(story, w)});
    if (!line.empty()) out.push_back(line);
    tally("loop.called", back.called);
    tally("loop.cold", back.cold);
    if (follows(story))
        out.push_back(w.say(
            step_key(last.next->step),
            {{"name", last.drill_name}, {"stage", stage_words(w, last.next->homework.stage)}}));
    return out;
}

std::string cold_answer(const Story& story, const words::Speaker& w) {
    if (!story.last) return {};
    std::vector<std::string> out;
    if (story.lesson.returned && story.lesson.returned->cold) {
        const auto& cold = *story.lesson.returned->cold;
        out.push_back(w.say("loop.last-cold", {{"n", cold.right}, {"of", cold.of}}));
    }
    if (const auto head = kept_head(story, w); !head.empty()) {
        if (out.empty()) out.push_back(w.say("loop.last-cold-shots"));
        out.push_back(head);
    }
    return joined(out);
}

} // namespace page
