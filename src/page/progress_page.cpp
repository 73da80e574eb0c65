#include "page/progress_page.hpp"

#include "page/binder_front.hpp"
#include "page/chronology_page.hpp"
#include "page/log_notes.hpp"
#include "page/parts.hpp"
#include "page/table.hpp"
#include "page/verdict.hpp"
#include "words/date.hpp"
#include "words/side.hpp"

#include <algorithm>

namespace page {

using figure::Easel;
using figure::Symbol;
using theme::Text;

namespace {

constexpr double picture_height = 330; ///< points, on every sheet

std::vector<record::Date> days_of(const AimCourse& aim) {
    std::vector<record::Date> out;
    for (const auto& picture : aim.pictures)
        for (const auto& block : picture.blocks)
            out.push_back(block.date);
    std::ranges::sort(out);
    const auto twice = std::ranges::unique(out);
    out.erase(twice.begin(), twice.end());
    return out;
}

/// The days of one sheet, first and last.
struct Days {
    record::Date first, last;
    bool hold(record::Date d) const { return d >= first && d <= last; }
};

std::vector<Days> sheets_of(const AimCourse& aim) {
    const auto days = days_of(aim);
    std::vector<Days> out;
    for (std::size_t i = 0; i < days.size(); i += days_on_a_sheet)
        out.push_back({days[i], days[std::min(i + days_on_a_sheet, days.size()) - 1]});
    return out;
}

std::string cell(const Easel& easel, const AimCourse& aim, record::Date day, Symbol symbol) {
    for (const CourseRow& row : aim.rows)
        if (row.date == day && row.symbol == symbol)
            return easel.words.say(
                "binder.typical",
                {{"x", words::side_short(aim.measure, row.sample.median, easel.words)},
                 {"n", row.sample.count}});
    return easel.words.say("binder.none");
}

Block numbers(const Easel& easel, const Course& course, const AimCourse& aim, const Days& days) {
    const auto& w = easel.words;
    const std::vector<TableColumn> columns{
        {w.say("binder.column.date"), 1.3},
        {w.say("binder.shots-of", {{"block", w.say("one.before")}}), 1.3},
        {w.say("binder.shots-of", {{"block", w.say("one.after")}}), 1.3},
        {w.say("binder.shots-of", {{"block", w.say("binder.column.cold")}}), 1.3},
        {w.say("binder.column.kept-of-last"), 1.3}};
    std::vector<TableRow> rows;
    std::vector<record::Date> seen;
    for (const CourseRow& row : aim.rows)
        if (days.hold(row.date) && (seen.empty() || seen.back() != row.date))
            seen.push_back(row.date);
    for (const record::Date day : seen) {
        std::string kept = w.say("binder.none");
        for (const Attended& lesson : course.lessons)
            if (lesson.kept_on == day && lesson.story->lesson.aim &&
                lesson.story->lesson.aim->measure.value == aim.measure)
                kept = kept_words(easel, lesson, false);
        TableRow line;
        line.cells = {{words::date_long(day, w), Text::caption, true},
                      {cell(easel, aim, day, Symbol::before), Text::caption},
                      {cell(easel, aim, day, Symbol::after), Text::caption},
                      {cell(easel, aim, day, Symbol::cold), Text::caption},
                      {kept, Text::caption}};
        rows.push_back(std::move(line));
    }
    return table(easel, "numbers", columns, rows, 12);
}

Block notes_below(const Easel& easel, double height, double before, const char* key) {
    Block block{.name = "lines"};
    block.space_before = before;
    block.at_foot = true;
    block.pieces.push_back(
        {lines_to_write_on(easel, easel.words.say(key), column_width(easel), height)});
    return block;
}

/// Aim and sentence in room that is the same on every sheet, so that the picture keeps its place.
Block fixed_head(const Easel& easel, const std::string& aim, const std::string& sentence) {
    const double width = column_width(easel);
    ink::Drawing words =
        stacked({tagged(figure::paragraph(easel, Text::lead, aim, width), "P"),
                 tagged(figure::paragraph(easel, Text::body, sentence, width), "P")},
                2);
    const double room = easel.theme.setting(Text::lead).leading * 2 +
                        easel.theme.setting(Text::body).leading * (is_narrow(easel) ? 4 : 2);
    words.size.height = std::max(words.size.height, room);
    Block block{.name = "aim"};
    block.pieces.push_back({std::move(words)});
    return block;
}

/// The back: nothing where the picture is, so that the sheet can be laid over another. On a narrow
/// sheet the numbers stand here.
Section back(const Easel& easel, const std::string& name, Block numbers) {
    Section section{.name = name + "-back"};
    if (is_narrow(easel)) {
        numbers.space_before = 0;
        const double room = easel.theme.live(true).height - numbers.height() - 20;
        section.blocks.push_back(std::move(numbers));
        if (room > 110) section.blocks.push_back(notes_below(easel, room, 20, "binder.aim-notes"));
        return section;
    }
    section.blocks.push_back(
        text_block(easel, Text::small, easel.words.say("binder.window"), 0, column_width(easel)));
    const double page = easel.theme.live(true).height;
    section.blocks.push_back(notes_below(easel, page * 0.42, 0, "binder.aim-notes"));
    return section;
}

ink::Drawing picture(const Easel& easel, const AimCourse& aim, const Days& days) {
    figure::ProgressInput input;
    input.places = days_on_a_sheet;
    input.measures = aim.pictures;
    if (easel.theme.setting(Text::body).style.size > 14 && !input.measures.empty())
        input.measures.resize(1); // large print: one chart a page, the aim's
    for (auto& m : input.measures)
        std::erase_if(m.blocks, [&](const auto& b) { return !days.hold(b.date); });
    input.message = progress_sentence(easel, aim);
    ink::Drawing out = figure::progress(easel, input, column_width(easel), picture_height);
    // what has no room beside the others on a narrow page is left out, the aim never
    while (input.measures.size() > 1 && out.size.height > picture_height + 10) {
        input.measures.pop_back();
        out = figure::progress(easel, input, column_width(easel), picture_height);
    }
    return out;
}

} // namespace

std::string aim_and_range(const Easel& easel, const AimCourse& aim) {
    const std::string name = aim_name(easel, aim.measure, aim.club);
    const auto& wanted = aim.pictures.front().wanted;
    if (!wanted) return name;
    return easel.words.say(
        "coach.next.aim",
        {{"measure", name},
         {"range", words::side_range(aim.measure, wanted->first, wanted->second, easel.words)}});
}

std::string progress_sentence(const Easel& easel, const AimCourse& aim) {
    const auto& w = easel.words;
    const CourseRow* last = nullptr;
    for (const CourseRow& row : aim.rows)
        if (row.symbol == Symbol::cold) last = &row;
    if (aim.cold_tests < figure::tests_for_progress) {
        const std::string early = w.say("binder.progress.early", {{"n", aim.cold_tests}});
        if (!last) return early;
        return early + " " +
               w.say("binder.progress.last",
                     {{"date", words::date_long(last->date, w)},
                      {"x", words::side(aim.measure, last->sample.median, w)}});
    }
    return w.say("binder.progress.latest",
                 {{"n", aim.cold_tests},
                  {"date", words::date_long(last->date, w)},
                  {"x", words::side(aim.measure, last->sample.median, w)}});
}

ink::Drawing progress_picture(const Easel& easel, const AimCourse& aim, std::size_t first) {
    const auto sheets = sheets_of(aim);
    const std::size_t i = first / days_on_a_sheet;
    if (i >= sheets.size()) return {};
    return picture(easel, aim, sheets[i]);
}

std::vector<Section> progress_pages(const Easel& easel, const Course& course, const AimCourse& aim,
                                    const std::string& name) {
    const auto& w = easel.words;
    std::vector<Section> out;
    const auto sheets = sheets_of(aim);
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        Section front{.name = i == 0 ? name : name + "-" + std::to_string(i + 1)};
        front.right_hand = true;
        if (i == 0)
            front.title =
                w.say("binder.progress-of", {{"aim", aim_name(easel, aim.measure, aim.club)}});
        front.blocks.push_back(page_title(easel, w.say("binder.progress")));
        const double wide = column_width(easel);
        front.blocks.push_back(
            fixed_head(easel, aim_and_range(easel, aim), progress_sentence(easel, aim)));
        front.blocks.push_back(figure_block("progress", picture(easel, aim, sheets[i]), 10));
        front.blocks.push_back(
            text_block(easel, Text::small, w.say("binder.progress.read"), 6, wide));
        Block rows = numbers(easel, course, aim, sheets[i]);
        if (!is_narrow(easel)) front.blocks.push_back(rows);
        out.push_back(std::move(front));
        out.push_back(back(easel, out.back().name, std::move(rows)));
    }
    return out;
}

} // namespace page
