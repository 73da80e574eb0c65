#include "page/term_overview.hpp"

#include "figure/dots.hpp"
#include "page/binder_front.hpp"
#include "page/parts.hpp"
#include "page/table.hpp"
#include "page/verdict.hpp"
#include "words/date.hpp"

#include <algorithm>
#include <chrono>
#include <map>

namespace page {

using figure::Easel;
using theme::Text;

Section term_overview(const Easel& easel, const std::vector<OverviewRow>& rows,
                      const std::vector<MissingLine>& missing) {
    const auto& w = easel.words;
    const double width = column_width(easel);
    Section section{.name = "overview", .title = w.say("term.overview")};
    section.blocks.push_back(page_title(easel, section.title));
    section.blocks.push_back(text_block(easel, Text::body, w.say("term.alphabetical"), 0, width));
    std::vector<TableRow> lines;
    for (const auto& row : rows) {
        TableRow line;
        line.cells.push_back({row.name, Text::caption, true});
        for (const auto* text :
             {&row.sessions, &row.cold, &row.stage, &row.kept, &row.gap, &row.next})
            line.cells.push_back({*text, Text::caption});
        lines.push_back(std::move(line));
    }
    section.blocks.push_back(table(easel, "overview",
                                   {{w.say("term.column.student"), 1.5},
                                    {w.say("term.column.sessions"), 0.9},
                                    {w.say("term.column.cold"), 1.7},
                                    {w.say("term.column.stage"), 1.6},
                                    {w.say("term.column.kept"), 1.2},
                                    {w.say("term.column.gaps"), 1.0},
                                    {w.say("term.column.next"), 1.7}},
                                   lines, 10));
    section.blocks.push_back(heading(easel, w.say("term.missing"), 20));
    if (missing.empty()) {
        section.blocks.push_back(
            text_block(easel, Text::body, w.say("term.missing.none"), 2, width));
        return section;
    }
    std::vector<TableRow> gaps;
    for (const auto& line : missing) {
        if (!gaps.empty() && gaps.back().cells.front().text == line.whose) {
            gaps.back().cells.back().text += "; " + line.what;
            continue;
        }
        TableRow row;
        row.cells = {{line.whose, Text::caption, true}, {line.what, Text::caption}};
        gaps.push_back(std::move(row));
    }
    section.blocks.push_back(
        table(easel, "missing",
              {{w.say("term.column.student"), 1.4}, {w.say("term.column.missing"), 5}}, gaps, 2));
    return section;
}

namespace {

/// Week of the term, from 1.
long week_of(record::Date from, record::Date day) {
    return (std::chrono::sys_days(day) - std::chrono::sys_days(from)).count() / 7 + 1;
}

using Topics = std::map<long, std::map<std::string, int>>;

Topics topics(const Easel& easel, const record::Term& term,
              const std::vector<const Course*>& courses) {
    Topics out;
    for (const Course* course : courses)
        for (const Attended& lesson : course->lessons) {
            const record::Lesson& l = lesson.story->lesson;
            const std::string what =
                l.aim ? easel.words.say("measure." + key_of(l.aim->measure.value))
                      : easel.words.say("binder.no-aim");
            ++out[week_of(term.from.value, l.date.value)][what];
        }
    return out;
}

/// The latest middle shot of an adult's aim.
struct Latest {
    unit::Measure measure;
    double median;
    std::pair<double, double> wanted;
};

std::optional<Latest> latest(const Course& course) {
    if (course.latest().student.age == record::Age::junior || course.aims.empty())
        return std::nullopt;
    const AimCourse& aim = course.aims.back();
    if (aim.rows.empty()) return std::nullopt;
    return Latest{aim.measure, aim.rows.back().sample.median,
                  aim.pictures.front().wanted.value_or(std::pair{0.0, 0.0})};
}

std::optional<figure::DotInput> spread(const Easel& easel,
                                       const std::vector<const Course*>& courses) {
    std::map<unit::Measure, std::vector<Latest>> of;
    for (const Course* course : courses)
        if (const auto one = latest(*course)) of[one->measure].push_back(*one);
    const std::vector<Latest>* most = nullptr;
    for (const auto& [measure, list] : of)
        if (!most || list.size() > most->size()) most = &list;
    if (!most || most->size() < students_for_group) return std::nullopt;
    figure::DotInput input;
    input.measure = most->front().measure;
    figure::DotRow row;
    row.symbol = figure::Symbol::after;
    row.name = easel.words.say("term.group.everybody");
    std::vector<double> values;
    for (const Latest& one : *most)
        values.push_back(one.median);
    std::ranges::sort(values); // the order of the register would be a name
    for (const double value : values)
        row.dots.push_back({0, value, false});
    row.sample = measure::describe(values);
    input.rows.push_back(std::move(row));
    input.message = easel.words.say(
        "term.group.spread",
        {{"measure", easel.words.say("measure." + key_of(input.measure))}, {"n", most->size()}});
    return input;
}

} // namespace

Section group_page(const Easel& easel, const record::Term& term,
                   const std::vector<const Course*>& courses) {
    const auto& w = easel.words;
    const double width = column_width(easel);
    Section section{.name = "group", .title = w.say("term.group.title")};
    section.blocks.push_back(page_title(easel, section.title));
    if (courses.size() < students_for_group) {
        section.blocks.push_back(text_block(easel, Text::body, w.say("term.group.few"), 0, width));
        return section;
    }
    section.blocks.push_back(text_block(easel, Text::body, w.say("term.group.note"), 0, width));
    std::vector<TableRow> rows;
    for (const auto& [week, counts] : topics(easel, term, courses)) {
        std::string what;
        int lessons = 0;
        for (const auto& [topic, n] : counts) {
            what += (what.empty() ? "" : ", ") + topic;
            lessons += n;
        }
        TableRow row;
        row.cells = {{w.say("term.group.week", {{"n", week}}), Text::table, true},
                     {what, Text::table},
                     {w.say("term.group.lessons", {{"n", lessons}}), Text::table}};
        rows.push_back(std::move(row));
    }
    section.blocks.push_back(table(easel, "topics",
                                   {{w.say("term.column.week"), 1},
                                    {w.say("term.column.topics"), 4},
                                    {w.say("term.column.sessions"), 1.2}},
                                   rows, 10));
    if (const auto input = spread(easel, courses)) {
        section.blocks.push_back(heading(easel, input->message, 22));
        const auto values = figure::spread_of(*input);
        const bool sided = unit::row(input->measure).sided;
        const figure::Scale scale = sided ? figure::centred(values, 70, width - 10, 2)
                                          : figure::fitted(values, 70, width - 10, 6);
        section.blocks.push_back(
            figure_block("spread", figure::strip(easel, *input, scale, width, true), 6));
    }
    return section;
}

} // namespace page
