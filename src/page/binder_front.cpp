#include "page/binder_front.hpp"

#include "figure/grip.hpp"
#include "page/furniture.hpp"
#include "page/hold_words.hpp"
#include "page/log_notes.hpp"
#include "page/parts.hpp"
#include "page/table.hpp"
#include "page/verdict.hpp"
#include "words/date.hpp"
#include "words/side.hpp"

#include <algorithm>

namespace page {

using figure::Easel;
using theme::Text;

namespace {

/// The binder's name as large as the column allows, and whose it is.
ink::Drawing masthead(const Easel& easel, const Course& course) {
    const double width = column_width(easel);
    theme::Setting name = easel.theme.setting(Text::title);
    const double larger = std::max(1.0, 40 / name.style.size);
    name.style.size *= larger, name.leading *= larger;
    theme::Setting who = easel.theme.setting(Text::title);
    who.style.weight = 400;
    ink::Drawing bar;
    bar.size = {width, 4};
    bar.add(ink::Fill{ink::Path::rect({0, 0, 54, 4}), easel.theme.accent});
    return stacked(
        {bar, tagged(figure::paragraph(easel, name, easel.words.say("binder.title"), width), "H1"),
         tagged(figure::paragraph(easel, who, whose(easel, course.latest().student), width), "P")},
        8);
}

std::string span_of_days(const Easel& easel, const Course& course) {
    const auto& w = easel.words;
    const auto first = course.lessons.front().story->lesson.date.value;
    const auto last = course.latest().date.value;
    const std::size_t n = course.lessons.size();
    return n == 1 ? w.say("binder.lessons-one", {{"date", words::date_long(last, w)}})
                  : w.say("binder.lessons", {{"n", n},
                                             {"first", words::date_long(first, w)},
                                             {"last", words::date_long(last, w)}});
}

/// The newest lesson that recorded a hold; its drawing in the golfer's eye, or the first view.
const Story* with_hold(const Course& course) {
    for (auto i = course.lessons.rbegin(); i != course.lessons.rend(); ++i)
        if (!i->story->views.empty()) return i->story;
    return nullptr;
}

ink::Drawing hold_now(const Easel& easel, const Story& story, double width) {
    const GripView* view = &story.views.front();
    for (const GripView& v : story.views)
        if (looks_down(v.view)) view = &v;
    const auto& picture = view->after ? view->after : view->before;
    if (!picture) return {};
    const double height = 250, fitted = std::min(width, height * picture->width / picture->height);
    ink::Drawing drawn =
        figure::hand_drawing(easel.theme, *picture, story.lesson.student.hand.value, fitted);
    drawn.message = easel.words.say(
        "binder.hold-now", {{"date", words::date_long(story.lesson.date.value, easel.words)}});
    const std::string caption = drawn.message;
    return stacked({tagged(std::move(drawn), "Figure"),
                    tagged(figure::paragraph(easel, Text::caption, caption, width), "Caption")},
                   6);
}

ink::Drawing facts(const Easel& easel, const Course& course, double width) {
    const auto& w = easel.words;
    const record::Lesson& now = course.latest();
    const double label = easel.theme.setting(Text::label).style.size * 8;
    std::vector<ink::Drawing> rows;
    const auto add = [&](const char* key, Text text, const std::string& words) {
        if (!words.empty()) rows.push_back(labelled(easel, w.say(key), text, words, width, label));
    };
    std::string says;
    for (const Attended& lesson : course.lessons)
        if (!lesson.story->lesson.student.says.empty()) says = lesson.story->lesson.student.says;
    if (!says.empty()) says = w.say("one.goal-says", {{"words", says}});
    add("binder.goal", Text::lead, says);
    if (now.aim)
        add("binder.aim", Text::lead,
            w.say("measure." + key_of(now.aim->measure.value)) + ", " +
                words::side_range(now.aim->measure.value, now.aim->least, now.aim->most, w));
    add("binder.attended", Text::lead, span_of_days(easel, course));
    add("binder.coach", Text::lead, now.coach.name);
    add("binder.academy", Text::lead, now.coach.academy);
    if (now.next) add("binder.next", Text::lead, words::date_long(*now.next, w));
    return stacked(rows, 12);
}

} // namespace

Section binder_title(const Easel& easel, const Course& course,
                     const std::vector<std::string>& news) {
    Section section{.name = "title", .title = easel.words.say("binder.title"), .right_hand = true};
    const double width = column_width(easel), left = columns(easel, 4);
    const auto add = [&](std::string name, ink::Drawing drawing, double before) {
        Block block{.name = std::move(name)};
        block.space_before = before;
        block.pieces.push_back({std::move(drawing)});
        section.blocks.push_back(std::move(block));
    };
    add("masthead", masthead(easel, course), 0);
    std::vector<Cell> cells{{facts(easel, course, left), 0}};
    if (const Story* story = with_hold(course)) {
        const double x = columns(easel, 4) + easel.theme.gutter * figure::mm;
        cells.push_back({hold_now(easel, *story, width - x), x});
    }
    add("facts", side_by_side(cells), 34);
    NoteGroup box{easel.words.say(news.empty() ? "binder.grows" : "binder.news"), {}, true};
    if (news.empty()) box.notes.push_back({{}, easel.words.say("binder.grows.text"), Text::body});
    for (const auto& line : news)
        box.notes.push_back({{}, line, Text::body});
    add("news", note_group(easel, box, width), 18);
    section.blocks.back().at_foot = true;
    return section;
}

Section binder_contents(const Easel& easel, const std::vector<ContentsLine>& lines) {
    const auto& w = easel.words;
    Section section{.name = "contents", .title = w.say("binder.contents")};
    section.blocks.push_back(page_title(easel, section.title));
    section.blocks.push_back(text_block(easel, Text::small, w.say("binder.numbers"), 0));
    const std::vector<TableColumn> columns{{w.say("binder.column.lesson"), 0.8},
                                           {w.say("binder.column.date"), 1.7},
                                           {w.say("binder.column.what"), 4.2},
                                           {w.say("binder.column.revision"), 1.0},
                                           {w.say("binder.column.pages"), 1.1}};
    std::vector<TableRow> rows;
    for (const auto& line : lines) {
        const std::string pages =
            line.first == line.last
                ? std::to_string(line.first)
                : w.say("binder.range", {{"first", line.first}, {"last", line.last}});
        TableRow row;
        for (const auto* text : {&line.number, &line.date, &line.what, &line.revision, &pages})
            row.cells.push_back({*text, Text::table, line.part});
        row.target = "#" + line.place;
        rows.push_back(std::move(row));
    }
    Block block = table(easel, "contents", columns, rows, 10);
    double used = block.space_before + block.height();
    for (const auto& above : section.blocks)
        used += above.space_before + above.height();
    const double spare = easel.theme.live(true).height - used;
    const TableRow empty = empty_row();
    const int more = static_cast<int>(spare / empty.least);
    if (more > 0) {
        const std::vector<TableRow> blanks(static_cast<std::size_t>(more), empty);
        Block tail = table(easel, "rows to fill in", columns, blanks, 0);
        for (auto& piece : tail.pieces)
            block.pieces.push_back(std::move(piece));
    }
    section.blocks.push_back(std::move(block));
    return section;
}

std::string aim_name(const Easel& easel, unit::Measure measure, const std::string& club) {
    const std::string name = easel.words.say("measure." + key_of(measure));
    if (club.empty()) return name;
    return easel.words.say("binder.aim-club", {{"measure", name}, {"club", club}});
}

} // namespace page
