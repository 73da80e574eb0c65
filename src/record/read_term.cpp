#include "record/parts.hpp"
#include "record/read_date.hpp"
#include "record/start.hpp"
#include "record/term.hpp"

#include "diag/utf8.hpp"

namespace record {

namespace {

constexpr std::array<std::string_view, 3> papers{"A4", "Letter", "A5"};
constexpr std::uint32_t longest_comment = 500, longest_line = 90, longest_skill = 60;

void take_short(const yaml::Field& field, std::string& to, std::uint32_t most) {
    take(field, to);
    const std::uint32_t length = diag::code_points(to);
    if (length > most)
        field.warning(field.called() + " has " + std::to_string(length) +
                          " characters, the page has room for " + std::to_string(most),
                      "shorten it: the report is read in a minute");
}

void read_ladder(const yaml::Field& field, std::vector<Skill>& ladder) {
    for (const auto& item : field.items()) {
        Skill& skill = ladder.emplace_back();
        if (item.is_text()) {
            take_short(item, skill.name, longest_skill);
            continue;
        }
        item.only({"skill", "coach", "self"});
        take_short(item.required("skill", "handle in the fingers"), skill.name, longest_skill);
        skill.coach = choose<Rung>(item.at("coach"), rung_words);
        skill.self = choose<Rung>(item.at("self"), rung_words);
    }
    if (ladder.size() > most_skills)
        field.warning(std::to_string(ladder.size()) + " skills are named, the page has room for " +
                          std::to_string(most_skills),
                      "keep those that were worked on this term");
}

void read_student(const yaml::Field& field, TermStudent& student) {
    if (field.is_text()) { // a code alone
        student.code = {field.text().value_or(""), field.span()};
        return;
    }
    field.only({"code", "comment", "can", "next", "ladder", "words"});
    const yaml::Field code = field.required("code", "RU-04");
    student.code = {code.text().value_or(""), code.span()};
    take_short(field.at("comment"), student.comment, longest_comment);
    for (const auto& item : field.at("can").items()) {
        std::string line;
        take_short(item, line, longest_line);
        if (!line.empty()) student.can.push_back(std::move(line));
    }
    if (student.can.size() > can_do_lines)
        field.at("can").warning(std::to_string(student.can.size()) +
                                    " lines say what the student can do, the page prints three",
                                "keep the three that matter most");
    take_short(field.at("next"), student.next, longest_line);
    read_ladder(field.at("ladder"), student.ladder);
    take_short(field.at("words"), student.words, longest_comment);
}

void read_register(const yaml::Field& field, Term& term, diag::Findings& findings) {
    if (!field) return;
    term.lists_students = true;
    for (const auto& item : field.items()) {
        TermStudent student;
        read_student(item, student);
        for (const auto& other : term.students)
            if (!student.code.value.empty() && other.code.value == student.code.value)
                findings.error(student.code.span,
                               "'" + student.code.value + "' is in the register twice",
                               "take one of the two away");
        term.students.push_back(std::move(student));
    }
}

diag::Located<Date> read_day(const yaml::Field& field) {
    diag::Located<Date> out;
    out.span = field.span();
    if (const auto date = read_date(field)) out.value = *date;
    return out;
}

} // namespace

Term read_term(const diag::Source& source, diag::Findings& findings) {
    Term term;
    const yaml::Document document(source, findings);
    if (!document.readable()) return term;
    const yaml::Field root = document.root();
    root.only(
        {"term", "from", "to", "language", "paper", "coach", "lessons", "group page", "students"});
    take(root.required("term", "Spring term 2026"), term.name);
    term.from = read_day(root.required("from", "2026-03-01"));
    term.to = read_day(root.required("to", "2026-06-30"));
    if (term.from.value.ok() && term.to.value.ok() && term.to.value < term.from.value)
        findings.error(term.to.span, "the term ends before it begins on " + iso(term.from.value),
                       "correct one of the two: 'from' is the first day, 'to' the last");
    take(root.at("language"), term.language);
    if (const auto paper = choose<Paper>(root.at("paper"), papers)) term.paper = *paper;
    if (root.at("coach")) read_coach(root.at("coach"), Start{}, term.coach);
    const yaml::Field lessons = root.at("lessons");
    term.lessons = {lessons.text().value_or(""), lessons.span()};
    take(root.at("group page"), term.group_page);
    read_register(root.at("students"), term, findings);
    return term;
}

} // namespace record
