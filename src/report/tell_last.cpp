#include "report/tell_last.hpp"

#include "drills/way_to.hpp"
#include "report/block_values.hpp"

#include <algorithm>
#include <cctype>

namespace report {

namespace {

using drills::Homework;
using shots::Block;

constexpr std::size_t most_lessons_shown = 6; ///< the latest; a page has room for them

std::string small(std::string text) {
    std::ranges::transform(text, text.begin(), [](unsigned char c) { return std::tolower(c); });
    return text;
}

bool has_measured(const shots::Table* table, unit::Measure measure) {
    return table && table->measured[static_cast<std::size_t>(measure)];
}

bool same_club(const record::Lesson& then, const record::Lesson& now) {
    const std::string a = small(then.club.name), b = small(now.club.name);
    return a.empty() || b.empty() || a == b;
}

/// The two clubs, when they are why cold shots of the last aim are held against nothing.
std::vector<std::string> other_clubs(const record::Lesson& last, const record::Lesson& now,
                                     const shots::Table* table) {
    if (!last.aim || same_club(last, now) || !has_measured(table, last.aim->measure.value))
        return {};
    if (of_block(*table, Block::cold, last.aim->measure.value).empty()) return {};
    return {last.club.name, now.club.name};
}

/// What the cold shots of `now` kept of the change of `last`.
std::optional<measure::Retention> kept_of(const Earlier& last, const record::Lesson& now,
                                          const shots::Table* table) {
    if (!last.lesson->aim || !comparable(last, now)) return std::nullopt;
    const auto& aim = *last.lesson->aim;
    const auto measure = aim.measure.value;
    if (measure == unit::Measure::offline) return std::nullopt; // never judged
    if (!has_measured(last.table, measure) || !has_measured(table, measure)) return std::nullopt;
    const auto values = [&](const shots::Table& from, Block block) {
        return counted(of_block(from, block, measure), measure).values;
    };
    const auto cold = values(*table, Block::cold);
    if (cold.empty()) return std::nullopt;
    return measure::retained(values(*last.table, Block::before), values(*last.table, Block::after),
                             cold, measure::Wanted{aim.least, aim.most, aim.worth_having});
}

bool met(const record::Tally& tally, const drills::Count& count) {
    return tally.right * count.tries >= count.pass * tally.of;
}

std::optional<bool> passed(const record::Returned& back, const drills::Drill& drill) {
    if (back.passed) return back.passed;
    if (!back.right || drill.count.pass == 0) return std::nullopt;
    const bool days_enough = !back.days_done || *back.days_done >= drill.count.days;
    return met(*back.right, drill.count) && days_enough;
}

/// Shots before boxes: what the ball did in the cold test counts more than what was ticked.
std::optional<bool> kept(const record::Returned& back, const drills::Drill& drill,
                         const std::optional<measure::Retention>& shots) {
    using measure::Kept;
    if (shots && shots->kept == Kept::kept) return true;
    if (shots &&
        (shots->kept == Kept::partly || shots->kept == Kept::not_yet || shots->kept == Kept::past))
        return false;
    if (back.cold && drill.count.pass > 0) return met(*back.cold, drill.count);
    return std::nullopt;
}

/// One lesson's look back.
struct CameBack {
    std::vector<page::BackDrill> drills;
    std::optional<measure::Retention> retention;
};

std::optional<unit::Stage> stage_named(const record::Lesson* lesson, std::string_view id) {
    if (!lesson) return std::nullopt;
    for (const auto& wish : lesson->drills)
        if (wish.id.value == id) return wish.stage;
    return std::nullopt;
}

/// The homework of that drill, as it was set or as if for the first time.
Homework homework_of(const std::string& id, const std::vector<Homework>& sets) {
    const auto found = std::ranges::find(sets, id, &Homework::drill);
    return found != sets.end() ? *found : Homework{id, {}, 0};
}

page::BackDrill look_at(const record::Returned& back, const record::Lesson* before,
                        const std::vector<Homework>& sets,
                        const std::optional<measure::Retention>& retention,
                        const std::vector<drills::Drill>& library) {
    page::BackDrill out;
    out.back = back;
    out.outcome.days_done = back.days_done;
    const std::string id = !back.drill.value.empty() ? back.drill.value
                           : sets.empty()            ? std::string()
                                                     : sets.front().drill;
    const auto* drill = drills::find(library, id);
    if (!drill) return out;
    out.name = drill->name;
    out.set = homework_of(id, sets);
    if (const auto stage = stage_named(before, id)) out.set->stage = *stage;
    if (back.stage) out.set->stage = *back.stage;
    if (back.lessons) out.set->not_passed = *back.lessons - 1;
    out.outcome.passed = passed(back, *drill);
    out.outcome.kept = kept(back, *drill, retention);
    out.outcome.past = retention && retention->kept == measure::Kept::past;
    out.next = drills::repeat_rule(*out.set, out.outcome, drill->easier);
    return out;
}

CameBack look_back(const record::Lesson& now, const shots::Table* table, const Earlier* before,
                   const std::vector<Homework>& sets, const std::vector<drills::Drill>& library) {
    CameBack out;
    if (before) out.retention = kept_of(*before, now, table);
    for (const auto& back : now.returned)
        out.drills.push_back(
            look_at(back, before ? before->lesson : nullptr, sets, out.retention, library));
    return out;
}

/// What the student took home from that lesson: what goes on first, then what is new.
std::vector<Homework> set_by(const record::Lesson& lesson, const CameBack& came) {
    std::vector<Homework> going_on, out;
    for (const auto& drill : came.drills)
        if (drill.goes_on()) going_on.push_back(drill.next->homework);
    if (lesson.drills.empty()) return going_on;
    for (const auto& wish : lesson.drills) {
        Homework set = homework_of(wish.id.value, going_on);
        if (wish.stage) set.stage = *wish.stage;
        out.push_back(std::move(set));
    }
    std::stable_partition(out.begin(), out.end(), [&](const Homework& set) {
        return std::ranges::find(going_on, set.drill, &Homework::drill) != going_on.end();
    });
    return out;
}

std::string planned(const record::Lesson& now, const record::Lesson* last) {
    for (const auto& back : now.returned)
        if (!back.planned.empty()) return back.planned;
    if (!last) return {};
    std::string out = last->plan.when;
    if (!last->plan.where.empty()) out += (out.empty() ? "" : ", ") + last->plan.where;
    return out;
}

void check_returned(const record::Returned& back, const std::vector<drills::Drill>& library,
                    diag::Findings& findings) {
    const auto& drill = back.drill;
    if (drill.value.empty() || drills::find(library, drill.value)) return;
    findings.error(drill.span, "no drill is called '" + drill.value + "'",
                   drills::way_to(drill.value, library));
}

} // namespace

bool comparable(const Earlier& last, const record::Lesson& now) {
    const auto& then = *last.lesson;
    return then.student.hand.value == now.student.hand.value && then.conditions.same_set_up &&
           now.conditions.same_set_up && same_club(then, now);
}

void tell_last(page::Story& story, const Inputs& in, diag::Findings& findings) {
    const auto& now = in.lesson;
    for (const auto& back : now.returned)
        check_returned(back, in.library, findings);
    std::vector<Homework> sets;
    for (std::size_t i = in.earlier.size(); i-- > 0;) { // the oldest first
        const Earlier* before = i + 1 < in.earlier.size() ? &in.earlier[i + 1] : nullptr;
        const auto& lesson = *in.earlier[i].lesson;
        sets = set_by(lesson, look_back(lesson, in.earlier[i].table, before, sets, in.library));
    }
    const Earlier* last = in.earlier.empty() ? nullptr : &in.earlier.front();
    if (now.returned.empty() && !last) return;
    CameBack came = look_back(now, in.table, last, sets, in.library);
    page::LastTime told;
    if (last) told.date = last->lesson->date.value;
    told.planned = planned(now, last ? last->lesson : nullptr);
    told.drills = std::move(came.drills);
    if (last) told.other_clubs = other_clubs(*last->lesson, now, in.table);
    const std::size_t shown = std::min(in.earlier.size(), most_lessons_shown);
    for (std::size_t i = shown; i-- > 0;)
        told.lessons.push_back({in.earlier[i].lesson->date.value, in.earlier[i].lesson->changed});
    if (came.retention)
        for (auto& e : story.evidence)
            if (e.measure == last->lesson->aim->measure.value) {
                e.retention = came.retention;
                told.measure = e.measure;
            }
    story.last = std::move(told);
}

} // namespace report
