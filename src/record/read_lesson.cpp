#include "record/read_lesson.hpp"

#include "record/parts.hpp"
#include "record/read_date.hpp"

#include <algorithm>

namespace record {

namespace {

/// A key that is looked for at the top but lives elsewhere, and where to write it.
struct Elsewhere {
    std::string_view key, home;
};
constexpr std::array elsewhere{
    Elsewhere{"name", "write it in 'student': student: {name: Ruth, hand: right}"},
    Elsewhere{"hand", "write it in 'student': student: {name: Ruth, hand: right}"},
    Elsewhere{"age", "write it in 'student': student: {name: Ruth, hand: right, age: junior}"},
    Elsewhere{"player", "call it 'student': student: {name: Ruth, hand: right}"},
    Elsewhere{"pupil", "call it 'student': student: {name: Ruth, hand: right}"},
    Elsewhere{"teacher", "call it 'coach': coach: Tom Harling"},
    Elsewhere{"contact", "write it in 'coach': coach: {name: Tom Harling, contact: ...}"},
    Elsewhere{"loft", "write it in 'club': club: {name: seven iron, loft: 32}"},
    Elsewhere{"lie", "write it in 'club': club: {name: seven iron, lie: 62.5}"},
    Elsewhere{"goal", "call it 'aim': aim: {measure: face, want: 2 L to 2 R}"},
    Elsewhere{"want", "write it in 'aim': aim: {measure: face, want: 2 L to 2 R}"},
    Elsewhere{"file", "write it in 'shots': shots: {file: shots.csv}"},
    Elsewhere{"columns", "write it in 'shots', two spaces to the right"},
    Elsewhere{"sign", "write it in 'shots', two spaces to the right"},
    Elsewhere{"blocks", "write it in 'shots', two spaces to the right"},
    Elsewhere{"before", "write it in 'grip', two spaces to the right"},
    Elsewhere{"after", "write it in 'grip', two spaces to the right"},
    Elsewhere{"knuckles", "write it in 'grip': before or after: grip: {before: {knuckles: 1}}"},
    Elsewhere{"drill", "call it 'drills': drills: [H1]"},
    Elsewhere{"location", "call it 'place'"},
    Elsewhere{"venue", "call it 'place'"},
    Elsewhere{"cold test", "write it in 'next': next: {date: 2026-05-28, cold test: 2026-05-28}"},
    Elsewhere{"last", "call it 'last lesson': last lesson: ../2026-04-30/lesson.yaml"},
};

/// Unknown keys of the record itself, with the home of those that belong elsewhere.
void check_keys(const yaml::Field& root, diag::Findings& findings) {
    const std::vector<std::string_view> known{
        "student",    "coach",       "place",   "date",       "lesson",  "revision",
        "replaces",   "language",    "paper",   "units",      "glove",   "suggestion",
        "club",       "bag",         "aim",     "saw",        "changed", "why",
        "comment",    "grip",        "targets", "shots",      "drills",  "conditions",
        "plan",       "next",        "notes",   "returned",   "history", "large print",
        "marks",      "photographs", "link",    "print name", "pain",    "log",
        "last lesson"};
    std::vector<std::string_view> told = refuse_private(root, findings, "pain");
    for (const auto& [key, value] : root.entries()) {
        const auto found = std::ranges::find(elsewhere, key.value, &Elsewhere::key);
        if (found == elsewhere.end()) continue;
        findings.error(key.span, "the record has no key '" + key.value + "'",
                       std::string(found->home));
        told.push_back(found->key);
    }
    root.only(known, told);
}

void read_heading(const yaml::Field& root, const Start& start, Lesson& lesson,
                  diag::Findings& findings) {
    const bool renamed = root.at("player") || root.at("pupil"); // told already, with the way out
    read_student(renamed ? root.at("student")
                         : root.required("student", "{name: Ruth, hand: right}"),
                 start, lesson.student, findings);
    if (const auto coach = root.at("coach")) read_coach(coach, start, lesson.coach);
    take(root.at("place"), lesson.place);
    const bool dated = lesson.date.span.source != nullptr; // by its folder
    const yaml::Field date = dated ? root.at("date") : root.required("date", "2026-05-14");
    if (date || !dated) lesson.date.span = date.span();
    if (const auto day = read_date(date)) lesson.date.value = *day;
    lesson.number = root.at("lesson").whole(1, 9999);
    lesson.revision = root.at("revision").whole(1, 99).value_or(1);
    lesson.revision_span = root.at("revision").span();
    take(root.at("replaces"), lesson.replaces);
    if (!lesson.replaces.empty() && !root.at("revision"))
        root.at("replaces")
            .warning("'replaces' stands without a 'revision', so nothing is printed of it",
                     "add the line 'revision: 2', or take this one away");
}

void read_house_ways(const yaml::Field& root, Lesson& lesson) {
    read_language(root.at("language"), lesson.language);
    read_paper(root.at("paper"), lesson.paper);
    if (const auto units = root.at("units")) read_units(units, lesson.units);
    take(root.at("large print"), lesson.large_print);
    take(root.at("glove"), lesson.glove);
    take(root.at("suggestion"), lesson.suggestion);
}

void read_words(const yaml::Field& root, Lesson& lesson) {
    const auto words = [](const yaml::Field& field, std::string& text, diag::Span& span) {
        take(field, text);
        span = field.span();
    };
    words(root.required("saw", "The face pointed right of target."), lesson.saw, lesson.saw_span);
    words(root.required("changed", "The handle now lies in the fingers."), lesson.changed,
          lesson.changed_span);
    words(root.at("why"), lesson.why, lesson.why_span);
    words(root.at("comment"), lesson.comment, lesson.comment_span);
}

void read_follow_up(const yaml::Field& root, Lesson& lesson) {
    take(root.at("targets"), lesson.targets);
    read_drills(root.at("drills"), lesson.drills);
    if (const auto plan = root.at("plan")) read_plan(plan, lesson.plan);
    read_next(root.at("next"), lesson);
    take(root.at("notes"), lesson.notes);
    read_returned(root.at("returned"), lesson.returned);
    read_last_lesson(root.at("last lesson"), lesson.last_lesson);
    read_log(root.at("log"), lesson.log_days);
    read_pain(root.at("pain"), lesson.pain);
    read_history(root.at("history"), lesson.date.value, lesson.history);
}

/// What stands around this record, asked for by the student's code.
Start start_of(const yaml::Field& root, const FindStart& find_start) {
    if (!find_start) return {};
    const yaml::Field student = root.at("student");
    const yaml::Field code = student.is_map() ? student.at("code") : student;
    return find_start({std::string(code.written()), code.span()}, student.is_text());
}

void read_clubs(const yaml::Field& root, Lesson& lesson) {
    if (const auto club = root.at("club")) read_club(club, lesson.club);
    if (const auto bag = root.at("bag")) read_bag(bag, lesson.bag);
    complete(lesson.club, lesson.bag);
}

/// The table that the record names, or the usual one.
void read_table(const yaml::Field& root, const Start& start, Lesson& lesson) {
    const yaml::Field shots = root.at("shots");
    lesson.no_shots = yaml::plain_word(shots.written()) == "none";
    if (shots) return read_shot_source(shots, start.shots, lesson.shots);
    if (start.shots.file.value.empty()) return;
    lesson.shots = start.shots;
    lesson.shots->span = root.span();
}

/// A table given for its record: YAML would find no end of faults in it.
bool tell_table(const diag::Source& source, diag::Findings& findings) {
    if (!yaml::plain_word(source.name()).ends_with(".csv")) return false;
    findings.error(source.whole(), "the file is a shot table, and a lesson record is wanted",
                   "name its record, which is often the lesson.yaml beside it: the table is read "
                   "along with it");
    return true;
}

} // namespace

Lesson read_lesson(const diag::Source& source, diag::Findings& findings,
                   const FindStart& find_start) {
    if (tell_table(source, findings)) return {};
    const yaml::Document document(source, findings);
    const yaml::Field root = document.root();
    if (!document.readable()) return {};
    if (!root.is_map()) {
        root.error("the file is no lesson record", "write it in lines such as 'date: 2026-05-14'");
        return {};
    }
    check_keys(root, findings);
    Start start = start_of(root, find_start);
    Lesson lesson = start.lesson;
    read_print_name(root.at("print name"), start.print_name);
    read_heading(root, start, lesson, findings);
    read_house_ways(root, lesson);
    read_clubs(root, lesson);
    read_aim(root.at("aim"), lesson.units, start.aims, lesson.aim);
    read_words(root, lesson);
    read_grips(root.at("grip"), lesson);
    read_photographs(root.at("photographs"), lesson.photographs);
    read_marks(root.at("marks"), lesson.marks);
    read_link(root.at("link"), lesson.link);
    read_table(root, start, lesson);
    if (const auto conditions = root.at("conditions"))
        read_conditions(conditions, lesson.units, lesson.conditions);
    read_follow_up(root, lesson);
    lesson.student.name = shortened(lesson.student.name, start);
    return lesson;
}

} // namespace record
