#include "page/chronology_page.hpp"

#include "page/binder_front.hpp"
#include "page/hold_words.hpp"
#include "page/log_notes.hpp"
#include "page/parts.hpp"
#include "page/table.hpp"
#include "page/verdict.hpp"
#include "words/date.hpp"

#include <algorithm>

namespace page {

using figure::Easel;
using theme::Text;

namespace {

const char* kept_key(measure::Kept kept) {
    switch (kept) {
    case measure::Kept::kept:
        return "kept.kept.word";
    case measure::Kept::partly:
        return "kept.partly.word";
    case measure::Kept::not_yet:
        return "kept.not-yet.word";
    case measure::Kept::cannot_tell:
        return "kept.cannot-tell.word";
    case measure::Kept::first_look:
        return "kept.first-look.word";
    case measure::Kept::past:
        return "verdict.past-square.word";
    }
    return "";
}

/// The weeks since the lesson before: the longer, the more room.
TableRow gap(const Easel& easel, long days) {
    const long n = weeks(days);
    TableRow row;
    row.cells.push_back({easel.words.say("binder.gap", {{"n", n}}), Text::small, n >= 5});
    row.least = std::min(18 + 3.0 * static_cast<double>(n), 60.0);
    return row;
}

TableRow line(const Easel& easel, const Attended& lesson, bool last) {
    const auto& w = easel.words;
    const record::Lesson& l = lesson.story->lesson;
    std::string drill_names;
    for (const auto& chosen : lesson.story->drills)
        drill_names += (drill_names.empty() ? "" : "\n") + chosen.drill.name;
    std::string when = words::date_long(l.date.value, w);
    if (l.number) when = w.say("head.lesson", {{"n", *l.number}}) + "\n" + when;
    TableRow row;
    row.cells = {
        {when, Text::caption, true},
        {l.aim ? aim_name(easel, l.aim->measure.value, l.club.name) : w.say("binder.no-aim"),
         Text::caption},
        {l.changed, Text::caption},
        {verdict_of_day(easel, *lesson.story), Text::caption},
        {drill_names, Text::caption},
        {kept_words(easel, lesson, last), Text::caption}};
    row.target = "#" + std::string("lesson-") + words::date_iso(l.date.value);
    return row;
}

} // namespace

std::string verdict_of_day(const Easel& easel, const Story& story) {
    if (const Evidence* aim = aim_of(story))
        return easel.words.say("verdict." + verdict_key(aim->change.verdict) + ".word");
    const LookCount looks = count_looks(story.lesson);
    if (looks.of > 0)
        return easel.words.say(
            "binder.looks", {{"before", looks.before}, {"after", looks.after}, {"of", looks.of}});
    return easel.words.say("binder.no-shots");
}

std::string kept_words(const Easel& easel, const Attended& lesson, bool last) {
    const auto& w = easel.words;
    if (lesson.kept && lesson.kept_on)
        return w.say("binder.kept-on", {{"kept", w.say(kept_key(lesson.kept->kept))},
                                        {"date", words::date_short(*lesson.kept_on, w)}});
    if (last && lesson.story->lesson.aim) return w.say("binder.kept-next");
    return w.say("binder.kept-none");
}

Section chronology_page(const Easel& easel, const Course& course) {
    const auto& w = easel.words;
    Section section{.name = "chronology", .title = w.say("binder.chronology")};
    section.right_hand = true;
    section.blocks.push_back(page_title(easel, section.title));
    const std::vector<TableColumn> columns{
        {w.say("binder.column.lesson"), 1.4}, {w.say("binder.column.aim"), 1.4},
        {w.say("binder.column.change"), 2.4}, {w.say("binder.column.verdict"), 1.3},
        {w.say("binder.column.drill"), 1.3},  {w.say("binder.column.kept"), 1.2}};
    std::vector<TableRow> rows;
    for (std::size_t i = 0; i < course.lessons.size(); ++i) {
        const Attended& lesson = course.lessons[i];
        if (lesson.days_before && weeks(*lesson.days_before) > 0)
            rows.push_back(gap(easel, *lesson.days_before));
        rows.push_back(line(easel, lesson, i + 1 == course.lessons.size()));
    }
    section.blocks.push_back(table(easel, "chronology", columns, rows, 0));
    const double used = section.blocks[0].height() + section.blocks[1].height();
    const double page = easel.theme.live(true).height;
    if (page - used < 110) return section;
    Block lines{.name = "lines"};
    lines.space_before = 20;
    lines.pieces.push_back({lines_to_write_on(easel, w.say("binder.own-line"), column_width(easel),
                                              page - used - 20)});
    section.blocks.push_back(std::move(lines));
    return section;
}

} // namespace page
