#include "report/tell_drills.hpp"

#include "drills/way_to.hpp"
#include "page/drill_loop.hpp"
#include "page/hold_words.hpp"
#include "report/tell_mark.hpp"
#include "words/number.hpp"

#include <algorithm>
#include <cmath>

namespace report {

namespace {

using drills::HoldFault;
using drills::Middle;
using unit::Measure;

/// The last block that was hit with help: after, else before.
const measure::Sample& last_sample(const page::Evidence& e) {
    return e.change.after.count > 0 ? e.change.after : e.change.before;
}

/// Nought of a measure: the middle of the range the coach wants.
double middle_wanted(const record::Lesson& lesson, Measure measure) {
    if (!lesson.aim || lesson.aim->measure.value != measure) return 0;
    const auto& aim = *lesson.aim;
    return std::isfinite(aim.least) && std::isfinite(aim.most) ? (aim.least + aim.most) / 2 : 0;
}

double half_wanted(const record::Lesson& lesson, Measure measure) {
    if (!lesson.aim || lesson.aim->measure.value != measure) return 0;
    const auto& aim = *lesson.aim;
    return std::isfinite(aim.least) && std::isfinite(aim.most) ? (aim.most - aim.least) / 2 : 0;
}

std::vector<HoldFault> faults_of(const record::Lesson& lesson) {
    const unit::Grip& seen = lesson.has_after ? lesson.after : lesson.before;
    const unit::Grip& target = lesson.target;
    const page::Looks looks = page::looks(seen, target);
    std::vector<HoldFault> out;
    const auto add = [&](bool failed, HoldFault fault) {
        if (failed) out.push_back(fault);
    };
    const auto no = [](const std::optional<bool>& look) { return look && !*look; };
    const auto differs = [](const auto& value, const auto& wanted) {
        return value && wanted && *value != *wanted;
    };
    add(no(looks[0]), HoldFault::lay);
    add(no(looks[1]), HoldFault::square);
    add(no(looks[2]), HoldFault::order);
    add(seen.gap && *seen.gap, HoldFault::gap);
    add(seen.heel_pad && *seen.heel_pad != unit::HeelPad::on_top, HoldFault::pad);
    add(no(looks[4]), HoldFault::knuckles);
    add(no(looks[5]), HoldFault::balance);
    // these have no right answer of their own: only the coach's target makes one
    add(differs(seen.v, target.v), HoldFault::v);
    add(differs(seen.thumb_side, target.thumb_side) ||
            differs(seen.thumb_length, target.thumb_length),
        HoldFault::thumb);
    add(differs(seen.join, target.join), HoldFault::join);
    return out;
}

/// The number the student compares with: the coach's target, else what the lesson ended with.
std::string coachs_number(const record::Lesson& lesson, const words::Speaker* speaker) {
    const auto number = lesson.target.knuckles ? lesson.target.knuckles : lesson.after.knuckles;
    if (!number) return "____";
    const bool whole = std::floor(*number) == *number;
    return words::fixed(*number, whole ? 0 : 1, speaker ? speaker->language() : "en-GB");
}

void fill(std::string& text, const std::string& number) {
    constexpr std::string_view hole = "{knuckles}";
    for (auto at = text.find(hole); at != std::string::npos; at = text.find(hole))
        text.replace(at, hole.size(), number);
}

/// Stage and reason from the repeat rule, where it speaks of this drill.
void follow_up(page::ChosenDrill& chosen, const page::Story& story) {
    for (const auto& back : page::came_back_of(story))
        if (back.goes_on() && back.next->homework.drill == chosen.drill.id) {
            chosen.stage = back.next->homework.stage;
            chosen.reason_key = page::step_key(back.next->step) + ".why";
        }
    if (chosen.wish.stage) chosen.stage = *chosen.wish.stage;
}

void choose_named(page::Story& story, const Inputs& in, diag::Findings& findings) {
    for (const auto& wish : in.lesson.drills) {
        if (const auto* drill = drills::find(in.library, wish.id.value)) {
            auto chosen = chosen_drill(*drill, in);
            chosen.wish = wish;
            follow_up(chosen, story);
            story.drills.push_back(std::move(chosen));
            continue;
        }
        findings.error(wish.id.span, "no drill is called '" + wish.id.value + "'",
                       drills::way_to(wish.id.value, in.library));
    }
}

void choose_proposed(page::Story& story, const Inputs& in) {
    const auto add = [&](const std::string& id, const std::string& reason) {
        const auto* drill = drills::find(in.library, id);
        const bool there = std::ranges::any_of(
            story.drills, [&](const page::ChosenDrill& c) { return c.drill.id == id; });
        if (!drill || there) return;
        auto chosen = chosen_drill(*drill, in);
        chosen.proposed = true;
        chosen.reason_key = reason;
        follow_up(chosen, story);
        story.drills.push_back(std::move(chosen));
    };
    const auto back = page::came_back_of(story);
    for (const auto& drill : back)
        if (drill.goes_on()) add(drill.next->homework.drill, {});
    if (!story.drills.empty()) return;
    for (const auto& id : story.proposal.ids)
        if (std::ranges::none_of(back, [&](const page::BackDrill& drill) {
                return drill.next && drill.next->homework.drill == id;
            }))
            add(id, story.proposal.reason);
}

} // namespace

page::ChosenDrill chosen_drill(const drills::Drill& drill, const Inputs& in) {
    page::ChosenDrill out;
    out.drill = drill;
    const std::string number = coachs_number(in.lesson, in.speaker);
    for (auto& step : out.drill.steps)
        fill(step, number);
    for (auto& step : out.drill.junior_steps)
        fill(step, number);
    fill(out.drill.check, number);
    return out;
}

drills::Observed observe(const page::Story& story) {
    const auto& lesson = story.lesson;
    drills::Observed seen;
    seen.hand = lesson.student.hand.value;
    seen.junior = lesson.student.age == record::Age::junior;
    seen.pain = lesson.pain;
    seen.hold_looked_at = lesson.has_before || lesson.has_after;
    seen.hold_faults = faults_of(lesson);
    for (const auto& e : story.evidence) {
        const auto& sample = last_sample(e);
        if (e.estimated || sample.count == 0) continue;
        seen.shots = std::max(seen.shots, sample.count);
        const double zero = middle_wanted(lesson, e.measure);
        const Middle middle{sample.median - zero, sample.lower - zero, sample.upper - zero};
        const double half = half_wanted(lesson, e.measure);
        if (e.measure == Measure::face) seen.face = middle, seen.face_half = half;
        if (e.measure == Measure::path) seen.path = middle, seen.path_half = half;
        if (e.measure == Measure::start) seen.start = middle, seen.start_half = half;
        if (e.measure == Measure::carry) seen.carry = middle;
        if (e.measure == Measure::club_speed)
            seen.club_speed = Middle{sample.median, sample.lower, sample.upper},
            seen.club_speed_drift = sample.drift;
        if (e.measure == Measure::loft && e.is_aim && std::isfinite(lesson.aim->most))
            seen.loft_above = std::max(0.0, sample.median - lesson.aim->most);
    }
    if (lesson.aim)
        seen.speed_wanted = lesson.aim->measure.value == Measure::club_speed ||
                            lesson.aim->measure.value == Measure::ball_speed;
    return seen;
}

void choose_drills(page::Story& story, const Inputs& in, diag::Findings& findings) {
    story.proposal = drills::propose(observe(story));
    if (!in.lesson.drills.empty())
        choose_named(story, in, findings);
    else if (!in.lesson.pain)
        choose_proposed(story, in);
    for (auto& chosen : story.drills)
        chosen.mark = ground_mark(story, chosen.drill.mark);
}

} // namespace report
