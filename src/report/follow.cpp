#include "report/follow.hpp"

#include <algorithm>
#include <array>
#include <chrono>

namespace report {

namespace {

using figure::Symbol;
using page::Attended;
using page::Evidence;
using page::Story;

long days_between(record::Date from, record::Date to) {
    return static_cast<long>((std::chrono::sys_days(to) - std::chrono::sys_days(from)).count());
}

const Evidence* evidence_of(const Story& story, unit::Measure measure) {
    const auto found = std::ranges::find(story.evidence, measure, &Evidence::measure);
    return found == story.evidence.end() ? nullptr : &*found;
}

/// The only club that a block's shots name, the lesson's where they name none, and nothing when
/// they name several.
std::optional<std::string> club_of(const Story& story, const std::vector<shots::Shot>& shots) {
    std::string named;
    for (const auto& shot : shots) {
        if (shot.club.empty()) continue;
        if (!named.empty() && named != shot.club) return std::nullopt;
        named = shot.club;
    }
    return named.empty() ? story.lesson.club.name : named;
}

std::vector<double> counted(const std::vector<shots::Shot>& shots, unit::Measure measure) {
    std::vector<double> out;
    for (const auto& shot : shots)
        if (shot.set_aside.empty() && shot[measure]) out.push_back(*shot[measure]);
    return out;
}

/// What the next lesson's cold block shows of this lesson's aim.
void test_cold(Attended& lesson, const Story& next) {
    const auto& aim = lesson.story->lesson.aim;
    if (!aim) return;
    const unit::Measure measure = aim->measure.value;
    const Evidence* now = evidence_of(*lesson.story, measure);
    const Evidence* then = evidence_of(next, measure);
    if (!now || !then || then->cold.empty() || now->after.empty()) return;
    const auto hit = club_of(*lesson.story, now->after), cold = club_of(next, then->cold);
    if (!hit || hit != cold) return;
    lesson.kept = measure::retained(counted(now->before, measure), counted(now->after, measure),
                                    counted(then->cold, measure),
                                    measure::Wanted{aim->least, aim->most, aim->worth_having});
    lesson.kept_on = next.lesson.date.value;
    lesson.cold = then->cold_sample;
}

/// The drill as the lessons up to `i` set it, else as the library has it.
page::PassedDrill as_taught(const std::string& id, const std::vector<Attended>& lessons,
                            std::size_t i, const std::vector<drills::Drill>& library) {
    page::PassedDrill out;
    out.on = lessons[i].story->lesson.date.value;
    for (std::size_t k = 0; k <= i; ++k)
        for (const auto& chosen : lessons[k].story->drills)
            if (chosen.drill.id == id) out.drill = &chosen.drill, out.wish = &chosen.wish;
    if (!out.drill) out.drill = drills::find(library, id);
    return out;
}

/// Those whose pass mark was met, by what came back with a later lesson.
std::vector<page::PassedDrill> passed(const std::vector<Attended>& lessons,
                                      const std::vector<drills::Drill>& library) {
    std::vector<page::PassedDrill> out;
    for (std::size_t i = 0; i < lessons.size(); ++i) {
        const auto& last = lessons[i].story->last;
        if (!last) continue;
        for (const auto& back : last->drills) {
            if (!back.set || back.outcome.passed != true) continue;
            const std::string& id = back.set->drill;
            page::PassedDrill drill = as_taught(id, lessons, i, library);
            if (!drill.drill) continue;
            std::erase_if(out, [&](const page::PassedDrill& p) { return p.drill->id == id; });
            out.push_back(drill);
        }
    }
    return out;
}

struct BlockOf {
    Symbol symbol;
    const std::vector<shots::Shot>* shots;
    const measure::Sample* sample;
};

/// The blocks of one measure in the order of hitting.
std::vector<BlockOf> blocks_of(const Evidence& e) {
    std::vector<BlockOf> out;
    if (e.cold_sample) out.push_back({Symbol::cold, &e.cold, &*e.cold_sample});
    out.push_back({Symbol::before, &e.before, &e.change.before});
    out.push_back({Symbol::after, &e.after, &e.change.after});
    std::erase_if(out, [](const BlockOf& b) { return b.sample->count == 0; });
    return out;
}

figure::ProgressMeasure picture_of(const std::vector<Attended>& lessons, unit::Measure measure,
                                   const std::string& club,
                                   std::vector<page::CourseRow>* rows = nullptr) {
    figure::ProgressMeasure out{.measure = measure};
    for (const Attended& lesson : lessons) {
        const Evidence* e = evidence_of(*lesson.story, measure);
        if (!e) continue;
        const record::Date date = lesson.story->lesson.date.value;
        for (const BlockOf& b : blocks_of(*e)) {
            if (club_of(*lesson.story, *b.shots) != club) continue;
            out.blocks.push_back(
                {date, b.symbol, b.sample->median, b.sample->lower, b.sample->upper});
            if (rows) rows->push_back({date, b.symbol, *b.sample});
        }
    }
    if (!out.blocks.empty())
        out.axis = figure::year_axis(measure, out.blocks.front().median,
                                     lessons.front().story->lesson.units);
    return out;
}

/// A lesson's aim with the club of its shots; nothing when it was not measured.
std::optional<std::string> aim_club(const Story& story) {
    if (!story.lesson.aim) return std::nullopt;
    const Evidence* e = evidence_of(story, story.lesson.aim->measure.value);
    if (!e) return std::nullopt;
    return club_of(story, e->after.empty() ? e->before : e->after);
}

page::AimCourse course_of(const std::vector<Attended>& lessons, unit::Measure measure,
                          const std::string& club) {
    using enum unit::Measure;
    page::AimCourse out{.measure = measure, .club = club};
    out.pictures.push_back(picture_of(lessons, measure, club, &out.rows));
    const bool junior = lessons.back().story->lesson.student.age == record::Age::junior;
    for (const auto m : {face, path, loft, club_speed, carry}) {
        if (m == measure || (junior && (m == club_speed || m == carry))) continue;
        auto picture = picture_of(lessons, m, club);
        if (!picture.blocks.empty()) out.pictures.push_back(std::move(picture));
    }
    for (const auto& row : out.rows)
        if (row.symbol == Symbol::cold) ++out.cold_tests;
    return out;
}

std::vector<page::AimCourse> aims_of(const std::vector<Attended>& lessons) {
    std::vector<page::AimCourse> out;
    for (const Attended& lesson : lessons) {
        const auto club = aim_club(*lesson.story);
        if (!club) continue;
        const auto& aim = *lesson.story->lesson.aim;
        auto found = std::ranges::find_if(out, [&](const page::AimCourse& a) {
            return a.measure == aim.measure.value && a.club == *club;
        });
        if (found == out.end())
            found = out.insert(out.end(), course_of(lessons, aim.measure.value, *club));
        found->pictures.front().wanted = {aim.least, aim.most}; // the latest one stands
    }
    return out;
}

} // namespace

page::Course follow(std::vector<const page::Story*> stories,
                    const std::vector<drills::Drill>& library) {
    std::ranges::stable_sort(stories, {}, [](const Story* s) { return s->lesson.date.value; });
    page::Course course;
    for (const Story* story : stories) {
        Attended lesson{.story = story};
        if (!course.lessons.empty()) {
            Attended& last = course.lessons.back();
            lesson.days_before =
                days_between(last.story->lesson.date.value, story->lesson.date.value);
            test_cold(last, *story);
        }
        course.lessons.push_back(lesson);
    }
    course.aims = aims_of(course.lessons);
    course.passed = passed(course.lessons, library);
    return course;
}

} // namespace report
