#include "page/log_notes.hpp"
#include "page/parts.hpp"
#include "page/table.hpp"
#include "page/term_pages.hpp"
#include "words/date.hpp"

#include <algorithm>

namespace page {

using figure::Easel;
using theme::Text;

namespace {

constexpr double box = 11;
constexpr std::size_t rungs = record::rung_words.size();

/// The coach's mark is a tick through the box, the student's a dot in it.
void mark(ink::Drawing& d, const Easel& easel, ink::Point corner, bool coach, bool self) {
    d.add(ink::Stroke{ink::Path::rect({corner.x, corner.y, box, box}),
                      0.8,
                      easel.theme.text,
                      {},
                      ink::Cap::butt});
    if (self)
        d.add(ink::Fill{ink::Path::circle({corner.x + box / 2, corner.y + box / 2}, 2.6),
                        easel.theme.text});
    if (coach)
        d.add(ink::Stroke{ink::Path::polyline({{corner.x - 1.5, corner.y + 4.5},
                                               {corner.x + 3.5, corner.y + 10.5},
                                               {corner.x + 14, corner.y - 4}}),
                          1.6, easel.theme.text});
}

struct Places {
    double name = 0, rung = 0, width = 0;
    double at(std::size_t i) const { return name + (static_cast<double>(i) + 0.5) * rung; }
};

Places places(const Easel& easel) {
    const double width = column_width(easel);
    return {width * 0.40, width * 0.60 / static_cast<double>(rungs), width};
}

const char* rung_key(std::size_t rung) {
    static constexpr const char* keys[] = {"term.ladder.seen", "term.ladder.practising",
                                           "term.ladder.own", "term.ladder.holds"};
    return keys[rung];
}

ink::Drawing ladder_head(const Easel& easel, const Places& p) {
    const auto& setting = easel.theme.setting(Text::table_head);
    ink::Drawing d;
    d.size = {p.width, setting.leading + 5};
    d.add(ink::Tag{true, "TR", {}});
    const auto th = [&](const std::string& words, double x, text::Align align) {
        ink::Drawing cell;
        cell.add(figure::label(easel, Text::table_head, words, {x, setting.leading * 0.8}, align));
        d.add(tagged(std::move(cell), "TH"), {});
    };
    th(easel.words.say("term.ladder"), 0, text::Align::left);
    for (std::size_t i = 0; i < rungs; ++i)
        th(easel.words.say(rung_key(i)), p.at(i), text::Align::centre);
    d.add(ink::Tag{false, "TR", {}});
    d.add(rule(easel, p.width, 0.8), {0, d.size.height - 1});
    return d;
}

std::string spoken(const Easel& easel, const record::Skill& skill) {
    const auto one = [&](const char* key, const std::optional<record::Rung>& rung) {
        if (!rung) return std::string();
        const std::string word = easel.words.say(rung_key(static_cast<std::size_t>(*rung)));
        return easel.words.say("join.colon", {{"first", easel.words.say(key)}, {"second", word}}) +
               ". ";
    };
    return one("term.ladder.coach", skill.coach) + one("term.ladder.self", skill.self);
}

ink::Drawing ladder_row(const Easel& easel, const Places& p, const record::Skill& skill) {
    ink::Drawing name = figure::paragraph(easel, Text::body, skill.name, p.name - 10);
    ink::Drawing d;
    d.size = {p.width, std::max(name.size.height, 15.0) + 9};
    d.add(ink::Tag{true, "TR", {}});
    d.add(tagged(std::move(name), "TH"), {0, 4});
    ink::Drawing boxes;
    boxes.message = spoken(easel, skill);
    for (std::size_t i = 0; i < rungs; ++i)
        mark(boxes, easel, {p.at(i) - box / 2, (d.size.height - box) / 2},
             skill.coach && static_cast<std::size_t>(*skill.coach) == i,
             skill.self && static_cast<std::size_t>(*skill.self) == i);
    d.add(tagged(tagged(std::move(boxes), "Figure"), "TD"), {});
    d.add(ink::Tag{false, "TR", {}});
    d.add(ink::Stroke{ink::Path::segment({0, d.size.height}, {p.width, d.size.height}),
                      0.35,
                      easel.theme.rule,
                      {},
                      ink::Cap::butt});
    return d;
}

/// What both marks mean, drawn as they are.
ink::Drawing legend(const Easel& easel) {
    const auto& setting = easel.theme.setting(Text::caption);
    ink::Drawing d;
    const double base = setting.leading * 0.8, top = base - box + 1;
    double x = 2;
    for (const bool coach : {true, false}) {
        mark(d, easel, {x, top}, coach, !coach);
        x += box + 9;
        const ink::Words words = figure::label(
            easel, Text::caption, easel.words.say(coach ? "term.ladder.coach" : "term.ladder.self"),
            {x, base});
        x += words.width + 26;
        d.add(words);
    }
    d.size = {column_width(easel), setting.leading + 3};
    return d;
}

Block ladder(const Easel& easel, const record::TermStudent* entry) {
    const Places p = places(easel);
    Block block{.name = "ladder", .role = "Table"};
    block.space_before = 14;
    block.head = ladder_head(easel, p);
    std::vector<record::Skill> skills = entry ? entry->ladder : std::vector<record::Skill>{};
    if (skills.size() > record::most_skills) skills.resize(record::most_skills);
    for (const auto& skill : skills)
        block.pieces.push_back({ladder_row(easel, p, skill)});
    const std::size_t least = skills.empty() ? 5 : skills.size(); // to be named together
    for (std::size_t i = skills.size(); i < least; ++i)
        block.pieces.push_back({ladder_row(easel, p, {})});
    return block;
}

/// "I can" and what follows; an open line where the coach left one.
ink::Drawing can_lines(const Easel& easel, const record::TermStudent* entry) {
    const double width = column_width(easel), indent = 0;
    const auto& setting = easel.theme.setting(Text::coach_large);
    std::vector<ink::Drawing> lines;
    for (std::size_t i = 0; i < record::can_do_lines; ++i) {
        const bool told = entry && i < entry->can.size();
        if (told) {
            lines.push_back(tagged(
                figure::paragraph(easel, Text::coach_large,
                                  easel.words.say("term.can.line") + " " + entry->can[i], width),
                "P"));
            continue;
        }
        ink::Drawing line;
        line.size = {width, setting.leading * 1.15};
        const ink::Words words =
            figure::label(easel, Text::coach_large, easel.words.say("term.can.line"),
                          {indent, setting.leading * 0.8});
        const double y = setting.leading * 0.8 + 3;
        line.add(ink::Stroke{ink::Path::segment({words.width + 8, y}, {width, y}),
                             easel.theme.widths.rule,
                             easel.theme.rule,
                             {},
                             ink::Cap::butt});
        line.add(words);
        lines.push_back(std::move(line));
    }
    return stacked(lines, 5);
}

std::string attendance(const Easel& easel, const Termly& student) {
    const auto& w = easel.words;
    std::string days;
    for (const auto& lesson : student.course->lessons)
        days += (days.empty() ? "" : ", ") + words::date_short(lesson.story->lesson.date.value, w);
    return w.say("term.attendance-days", {{"n", student.course->lessons.size()}, {"days", days}});
}

} // namespace

Section term_ladder(const Easel& easel, const Termly& student) {
    const auto& w = easel.words;
    const double width = column_width(easel);
    const double label = easel.theme.setting(Text::label).style.size * 9;
    Section section{.name = "ladder", .title = w.say("term.can.title"), .right_hand = true};
    auto& blocks = section.blocks;
    blocks.push_back(page_title(easel, section.title));
    blocks.push_back(drawn_block("can", can_lines(easel, student.entry), 0));
    blocks.push_back(ladder(easel, student.entry));
    blocks.push_back(drawn_block("legend", legend(easel), 6));
    std::vector<ink::Drawing> rows;
    const std::string next = student.entry ? student.entry->next : std::string();
    if (!next.empty())
        rows.push_back(labelled(easel, w.say("term.next-aim"), Text::coach, next, width, label));
    rows.push_back(labelled(easel, w.say("term.lessons"), Text::body, attendance(easel, student),
                            width, label));
    if (easel.words.voice().junior)
        rows.push_back(
            labelled(easel, w.say("term.mind"), Text::body, w.say("term.growth"), width, label));
    blocks.push_back(drawn_block("next", stacked(rows, 8), 16));
    const std::string comment = student.entry ? student.entry->comment : std::string();
    const double used = total_height(blocks) + 18;
    const double rest = easel.theme.live(true).height - used;
    if (!comment.empty()) {
        NoteGroup said{w.say("term.comment"), {{{}, comment, Text::coach}}, true};
        blocks.push_back(drawn_block("comment", note_group(easel, said, width), 18));
        const double left = rest - blocks.back().height() - 18;
        if (left > 90)
            blocks.push_back(drawn_block(
                "lines", lines_to_write_on(easel, w.say("term.answer"), width, left), 18));
    } else if (rest > 90) {
        blocks.push_back(
            drawn_block("lines", lines_to_write_on(easel, w.say("term.comment"), width, rest), 18));
    }
    return section;
}

} // namespace page
