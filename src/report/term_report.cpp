#include "report/term_report.hpp"

#include "page/chronology_page.hpp"
#include "page/drill_loop.hpp"
#include "page/furniture.hpp"
#include "page/own_page.hpp"
#include "page/self_check.hpp"
#include "page/verdict.hpp"
#include "words/date.hpp"
#include "words/side.hpp"

#include <algorithm>

namespace report {

namespace {

using figure::Easel;
using page::Section;
using page::Termly;

page::Flowed laid_out(const Easel& easel, const std::vector<Section>& sections,
                      page::Running running) {
    const Section filler = page::lines_page(easel);
    auto out =
        page::flow(sections, easel.theme, page::furniture(easel, std::move(running)), &filler);
    for (auto& fault : page::self_check(out.book, easel.theme, easel.type))
        out.faults.push_back(std::move(fault));
    return out;
}

void name(page::Book& book, const Easel& easel, const record::Term& term, std::string title,
          const std::string& author) {
    book.title = std::move(title);
    book.author = author;
    book.language = easel.words.language();
    book.created = words::date_iso(term.to.value);
}

std::string term_title(const Easel& easel, const std::string& of) {
    return easel.words.say("head.document-of",
                           {{"document", easel.words.say("head.document.term")}, {"name", of}});
}

/// The longest gap between two lessons, weeks.
long longest_gap(const page::Course& course) {
    long days = 0;
    for (const auto& lesson : course.lessons)
        days = std::max(days, lesson.days_before.value_or(0));
    return page::weeks(days);
}

std::string last_cold(const page::Course& course, const words::Speaker& words) {
    const page::Attended* last = nullptr;
    for (const auto& lesson : course.lessons)
        if (lesson.cold && lesson.kept_on) last = &lesson;
    if (!last) return words.say("binder.kept-none");
    const auto measure = last->story->lesson.aim->measure.value;
    return words.say("term.cold-cell",
                     {{"measure", words.say("measure." + page::key_of(measure))},
                      {"x", words::side_short(measure, last->cold->median, words)},
                      {"date", words::date_short(*last->kept_on, words)}});
}

std::string last_kept(const Easel& easel, const page::Course& course) {
    const page::Attended* last = nullptr;
    for (const auto& lesson : course.lessons)
        if (lesson.kept) last = &lesson;
    return last ? page::kept_words(easel, *last, false) : easel.words.say("binder.kept-none");
}

/// The first drill of the last lesson and the stage the student stands at with it.
std::string drill_now(const page::Course& course, const words::Speaker& words,
                      const std::vector<drills::Drill>& library) {
    const auto& drills = course.lessons.back().story->drills;
    if (drills.empty()) return {};
    const auto& given = drills.front().drill;
    const auto known = std::ranges::find(library, given.id, &drills::Drill::id);
    return (known == library.end() ? given : *known).name + " · " +
           page::stage_words(words, drills.front().stage.value_or(unit::Stage::place));
}

std::string next_aim(const Termly& student, const words::Speaker& words) {
    if (student.entry && !student.entry->next.empty()) return student.entry->next;
    if (const auto& aim = student.course->latest().aim)
        return words.say("measure." + page::key_of(aim->measure.value));
    return {};
}

} // namespace

page::Flowed student_report(const Easel& easel, const Termly& student) {
    std::vector<Section> sections{page::term_ladder(easel, student)};
    for (auto& section : page::term_cold(easel, student))
        sections.push_back(std::move(section));
    sections.push_back(page::term_practice(easel, student));
    const record::Lesson& latest = student.course->latest();
    if (latest.student.age == record::Age::junior)
        sections.push_back(page::guardian_note(easel, student));
    auto out = laid_out(easel, sections,
                        {page::whose(easel, latest.student),
                         student.term->name,
                         page::coach_line(latest.coach),
                         true,
                         {}});
    name(out.book, easel, *student.term, term_title(easel, latest.printed_name()),
         latest.coach.name);
    return out;
}

page::Flowed overview_report(const Easel& easel, const record::Term& term,
                             const std::vector<OverviewEntry>& students,
                             const std::vector<page::MissingLine>& missing,
                             const std::vector<drills::Drill>& library) {
    std::vector<page::OverviewRow> rows;
    for (const auto& one : students) {
        const page::Course& course = *one.student->course;
        const Easel own{easel.type, easel.theme, *one.words};
        std::string who = page::whose(own, course.latest().student);
        if (course.latest().student.hand.value == unit::Hand::left)
            who = easel.words.say("term.left-handed", {{"name", who}});
        rows.push_back({std::move(who), std::to_string(course.lessons.size()),
                        last_cold(course, *one.words), drill_now(course, *one.words, library),
                        last_kept(own, course),
                        course.lessons.size() > 1 ? std::to_string(longest_gap(course))
                                                  : one.words->say("binder.none"),
                        next_aim(*one.student, *one.words)});
    }
    std::ranges::stable_sort(rows, {}, &page::OverviewRow::name);
    auto out = laid_out(easel, {page::term_overview(easel, rows, missing)},
                        {term.name, easel.words.say("term.overview"), term.coach.name, true,
                         easel.words.say("term.coach-only")});
    name(out.book, easel, term, easel.words.say("term.overview") + " · " + term.name,
         term.coach.name);
    return out;
}

page::Flowed group_report(const Easel& easel, const record::Term& term,
                          const std::vector<const page::Course*>& courses) {
    auto out =
        laid_out(easel, {page::group_page(easel, term, courses)},
                 {term.name, easel.words.say("term.group.title"), term.coach.name, true, {}});
    name(out.book, easel, term, easel.words.say("term.group.title") + " · " + term.name,
         term.coach.name);
    return out;
}

page::Flowed proof_report(const Easel& easel, const record::Term& term,
                          const std::vector<page::PileRow>& pile) {
    theme::Theme theme = easel.theme; // crosses where the holes come, at true size
    if (theme.punch == theme::Punch::none) theme.punch = theme::Punch::two;
    const Easel punched{easel.type, theme, easel.words};
    auto out = laid_out(punched, page::proof_pages(easel, pile),
                        {term.name, easel.words.say("proof.title"), term.coach.name, true, {}});
    name(out.book, easel, term, term.name, term.coach.name);
    return out;
}

std::vector<std::string> missing_of(const words::Speaker& words, const Termly& student) {
    std::vector<std::string> out;
    const page::Course& course = *student.course;
    bool cold = false, log = course.lessons.size() < 2;
    for (const auto& lesson : course.lessons) {
        cold = cold || lesson.cold.has_value();
        log = log || !lesson.story->lesson.returned.empty();
        const record::Lesson& l = lesson.story->lesson;
        const std::string date = words::date_short(l.date.value, words);
        if (!lesson.story->table) out.push_back(words.say("term.missing.shots", {{"date", date}}));
        if (!l.aim) out.push_back(words.say("term.missing.aim", {{"date", date}}));
    }
    if (!cold && course.lessons.size() > 1) out.push_back(words.say("term.missing.cold"));
    if (!log) out.push_back(words.say("term.missing.log"));
    const auto* entry = student.entry;
    if (!entry || entry->ladder.empty()) out.push_back(words.say("term.missing.ladder"));
    if (!entry || entry->can.size() < record::can_do_lines)
        out.push_back(words.say("term.missing.can", {{"n", entry ? entry->can.size() : 0}}));
    if (!entry || entry->comment.empty()) out.push_back(words.say("term.missing.comment"));
    return out;
}

} // namespace report
