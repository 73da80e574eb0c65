// The other pages of a student's term: cold tests, practice, the note for the family.
#include "page/binder_front.hpp"
#include "page/chronology_page.hpp"
#include "page/log_notes.hpp"
#include "page/parts.hpp"
#include "page/progress_page.hpp"
#include "page/table.hpp"
#include "page/term_pages.hpp"
#include "words/date.hpp"

#include <algorithm>

namespace page {

using figure::Easel;
using theme::Text;

namespace {

/// Lines down to the foot, where there is room for them.
void fill(const Easel& easel, Section& section, const char* key) {
    const double rest = easel.theme.live(true).height - total_height(section.blocks) - 18;
    if (rest > 90)
        section.blocks.push_back(drawn_block(
            "lines", lines_to_write_on(easel, easel.words.say(key), column_width(easel), rest),
            18));
}

/// What the cold test after each lesson said, in the words of the lesson.
std::vector<TableRow> kept_rows(const Easel& easel, const Course& course) {
    std::vector<TableRow> rows;
    for (std::size_t i = 0; i < course.lessons.size(); ++i) {
        const Attended& lesson = course.lessons[i];
        const record::Lesson& l = lesson.story->lesson;
        TableRow row;
        row.cells = {{words::date_long(l.date.value, easel.words), Text::table, true},
                     {l.changed, Text::table},
                     {kept_words(easel, lesson, i + 1 == course.lessons.size()), Text::table}};
        rows.push_back(std::move(row));
    }
    return rows;
}

/// "When the kettle goes on, in the kitchen, I will do drill 1. If …", in the student's words.
std::string plan_words(const Easel& easel, const record::Plan& plan) {
    const auto& w = easel.words;
    std::string out;
    if (!plan.when.empty() && !plan.where.empty())
        out = w.say("term.plan-when-where", {{"when", plan.when}, {"where", plan.where}});
    else if (!plan.when.empty())
        out = w.say("term.plan-when", {{"when", plan.when}});
    if (!plan.obstacle.empty() && !plan.instead.empty())
        out += (out.empty() ? "" : " ") +
               w.say("term.plan-if", {{"obstacle", plan.obstacle}, {"instead", plan.instead}});
    return out;
}

std::string log_words(const Easel& easel, const record::Returned& back) {
    const auto& w = easel.words;
    std::string out;
    if (back.days_done) out = w.say("term.log-days", {{"n", *back.days_done}});
    if (back.right)
        out += (out.empty() ? "" : ", ") +
               w.say("term.log-right", {{"right", back.right->right}, {"of", back.right->of}});
    return out.empty() ? w.say("term.log-nothing") : out;
}

/// One line a lesson: what changed and what was kept of it.
Block kept_table(const Easel& easel, const Course& course) {
    const auto& w = easel.words;
    return table(easel, "kept",
                 {{w.say("binder.column.lesson"), 1.4},
                  {w.say("binder.column.change"), 3.4},
                  {w.say("binder.column.kept"), 1.8}},
                 kept_rows(easel, course), 12);
}

bool were_measured(const Course& course) {
    return std::ranges::any_of(course.lessons,
                               [](const Attended& l) { return !l.story->evidence.empty(); });
}

TableRow log_row(const Easel& easel, const std::string& date, const BackDrill& drill) {
    const bool passed = drill.outcome.passed == true;
    TableRow row;
    row.cells = {{date, Text::table, true},
                 {drill.name.empty() ? drill.back.drill.value : drill.name, Text::table},
                 {log_words(easel, drill.back), Text::table},
                 {passed ? easel.words.say("term.passed") : std::string(), Text::table}};
    return row;
}

} // namespace

std::vector<Section> term_cold(const Easel& easel, const Termly& student) {
    const auto& w = easel.words;
    const Course& course = *student.course;
    std::vector<Section> out;
    for (const AimCourse& aim : course.aims) {
        Section section{.name = "cold"};
        if (out.empty()) section.title = w.say("term.cold.title");
        section.blocks.push_back(page_title(easel, w.say("term.cold.title")));
        const double width = column_width(easel);
        section.blocks.push_back(
            text_block(easel, Text::lead, aim_and_range(easel, aim), 0, width));
        section.blocks.push_back(
            text_block(easel, Text::body, progress_sentence(easel, aim), 2, width));
        section.blocks.push_back(figure_block("progress", progress_picture(easel, aim, 0), 10));
        section.blocks.push_back(
            text_block(easel, Text::small, w.say("binder.progress.read"), 6, width));
        if (out.empty()) section.blocks.push_back(kept_table(easel, course));
        fill(easel, section, "term.notice");
        out.push_back(std::move(section));
    }
    if (!out.empty()) return out;
    Section section{.name = "cold", .title = w.say("term.cold.title")};
    section.blocks.push_back(page_title(easel, section.title));
    section.blocks.push_back(text_block(
        easel, Text::lead, w.say(were_measured(course) ? "term.cold.no-aim" : "term.cold.none"), 0,
        column_width(easel)));
    section.blocks.push_back(kept_table(easel, course));
    fill(easel, section, "term.notice");
    return {section};
}

Section term_practice(const Easel& easel, const Termly& student) {
    const auto& w = easel.words;
    Section section{.name = "practice", .title = w.say("term.practice.title")};
    section.blocks.push_back(page_title(easel, section.title));
    std::vector<TableRow> logs;
    std::vector<ink::Drawing> plans, sentences;
    const double width = column_width(easel);
    for (const Attended& lesson : student.course->lessons) {
        const record::Lesson& l = lesson.story->lesson;
        const std::string date = words::date_long(l.date.value, w);
        if (lesson.story->last)
            for (const BackDrill& drill : lesson.story->last->drills) {
                logs.push_back(log_row(easel, date, drill));
                if (!drill.back.words.empty())
                    sentences.push_back(tagged(
                        figure::paragraph(easel, Text::lead,
                                          w.say("one.goal-says", {{"words", drill.back.words}}),
                                          width),
                        "P"));
            }
        if (const std::string plan = plan_words(easel, l.plan); !plan.empty())
            plans.push_back(tagged(
                figure::paragraph(easel, Text::body,
                                  w.say("join.colon", {{"first", date}, {"second", plan}}), width),
                "P"));
    }
    if (plans.size() > 2) plans.erase(plans.begin(), plans.end() - 2);
    if (logs.empty())
        section.blocks.push_back(
            text_block(easel, Text::lead, w.say("term.practice.none"), 0, width));
    else
        section.blocks.push_back(table(easel, "logs",
                                       {{w.say("term.column.back"), 1.4},
                                        {w.say("binder.column.drill"), 1.6},
                                        {w.say("term.column.log"), 2.6},
                                        {w.say("term.column.passed"), 0.9}},
                                       logs, 0));
    if (!plans.empty()) {
        section.blocks.push_back(heading(easel, w.say("term.practice.plan")));
        section.blocks.push_back(drawn_block("plans", stacked(plans, 5), 3));
    }
    if (student.entry && !student.entry->words.empty())
        sentences.push_back(tagged(
            figure::paragraph(easel, Text::lead,
                              w.say("one.goal-says", {{"words", student.entry->words}}), width),
            "P"));
    if (!sentences.empty()) {
        section.blocks.push_back(heading(easel, w.say("term.practice.sentence")));
        section.blocks.push_back(drawn_block("sentences", stacked(sentences, 5), 3));
    }
    fill(easel, section, sentences.empty() ? "term.practice.sentence" : "term.practice.plans-next");
    return section;
}

Section guardian_note(const Easel& easel, const Termly& student) {
    const auto& w = easel.words;
    Section section{.name = "guardian", .title = w.say("guardian.title")};
    section.blocks.push_back(page_title(easel, section.title));
    const double width = column_width(easel);
    std::vector<ink::Drawing> lines;
    for (const char* key : {"guardian.space", "guardian.ask", "guardian.no-score"})
        lines.push_back(tagged(figure::paragraph(easel, Text::step, w.say(key), width), "P"));
    if (!student.contact.empty())
        lines.push_back(tagged(
            figure::paragraph(easel, Text::body,
                              w.say("guardian.contact", {{"contact", student.contact}}), width),
            "P"));
    section.blocks.push_back(drawn_block("lines of help", stacked(lines, 10), 4));
    NoteGroup held{w.say("guardian.held-title"), {{{}, w.say("guardian.held"), Text::body}}, true};
    if (student.kept_until)
        held.notes.push_back(
            {{},
             w.say("guardian.until", {{"date", words::date_long(*student.kept_until, w)}}),
             Text::body});
    section.blocks.push_back(drawn_block("held", note_group(easel, held, width), 20));
    fill(easel, section, "guardian.questions");
    return section;
}

} // namespace page
