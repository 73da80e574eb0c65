#include "people/start.hpp"

namespace people {

namespace {

void take_house(const House& house, record::Start& start) {
    record::Lesson& lesson = start.lesson;
    if (!house.coaches.empty()) lesson.coach = house.coaches.front();
    lesson.coach.academy = house.academy;
    lesson.place = house.place;
    if (house.language) lesson.language = *house.language;
    if (house.paper) lesson.paper = *house.paper;
    if (house.units) lesson.units = *house.units;
    if (house.large_print) lesson.large_print = *house.large_print;
    lesson.conditions = house.conditions;
    lesson.marks = house.marks;
    start.print_name = house.print_name;
    start.coaches = house.coaches;
    start.aims = house.aims;
    start.shots = house.shots;
}

void take_person(const Person& person, record::Start& start) {
    record::Lesson& lesson = start.lesson;
    lesson.student.code = person.code.value;
    lesson.student.hand = person.hand;
    lesson.student.age = person.age;
    if (person.language) lesson.language = *person.language;
    if (person.paper) lesson.paper = *person.paper;
    if (person.distance) lesson.units.distance = *person.distance;
    if (person.speed) lesson.units.speed = *person.speed;
    if (person.large_print) lesson.large_print = *person.large_print;
    if (person.glove) lesson.glove = *person.glove;
    if (person.print_name) start.print_name = *person.print_name;
    lesson.bag = person.bag;
    start.first_name = person.first_name;
    start.family_name = person.family_name;
    start.known = true;
}

/// The coach whom the person's entry names by a part of the name.
void take_coach(const Person& person, record::Start& start) {
    if (person.coach.empty()) return;
    for (const record::Coach& coach : start.coaches)
        if (coach.name.find(person.coach) != std::string::npos) {
            start.lesson.coach = coach;
            return;
        }
    start.lesson.coach.name = person.coach;
    start.lesson.coach.contact.clear();
}

void report_stranger(const People& people, const diag::Located<std::string>& code, bool bare,
                     diag::Findings& findings) {
    const std::string_view own = people.code_of(code.value), near = people.nearest_code(code.value);
    const std::string what = "people.yaml does not know " + diag::quote(code.value);
    const std::string hint =
        !own.empty()    ? "write the code: student: " + std::string(own)
        : !near.empty() ? "did you mean '" + std::string(near) + "'?"
        : bare          ? "add the student there, or write the record's 'student' out in full"
                        : "add the student there, or correct the code";
    if (bare)
        findings.error(code.span, what, hint);
    else
        findings.warning(code.span, what, hint);
}

} // namespace

void hand_on(const std::vector<diag::Finding>& from, diag::Findings& to) {
    for (const diag::Finding& finding : from) {
        if (finding.severity == diag::Severity::error)
            to.error(finding.span, finding.what, finding.hint);
        if (finding.severity == diag::Severity::warning)
            to.warning(finding.span, finding.what, finding.hint);
        if (finding.severity == diag::Severity::note)
            to.note(finding.span, finding.what, finding.hint);
    }
}

record::Start start_of(const House* house, const People* people,
                       const diag::Located<std::string>& code, bool bare,
                       diag::Findings& findings) {
    record::Start start;
    if (house) take_house(*house, start);
    if (!people) return start;
    const Person* person = people->find(code.value);
    if (person) {
        hand_on(person->findings, findings);
        take_person(*person, start);
        take_coach(*person, start);
        return start;
    }
    if (code.value.empty()) return start;
    report_stranger(*people, code, bare, findings);
    start.told = bare;
    return start;
}

} // namespace people
