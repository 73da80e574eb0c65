#include "cli/term_register.hpp"

#include <algorithm>
#include <set>

namespace cli {

fs::path lessons_folder(const record::Term& term, const fs::path& file) {
    const fs::path own = file.parent_path() / term.lessons.value;
    return own.empty() ? fs::path(".") : own;
}

void check_folder_of(const record::Term& term, const fs::path& file, diag::Findings& findings) {
    std::error_code gone;
    if (!fs::is_directory(lessons_folder(term, file), gone))
        findings.error(term.lessons.span, "there is no folder '" + term.lessons.value + "'",
                       "'lessons' is the folder of the lessons, beside the term file");
}

bool in_term(const record::Term& term, const record::Lesson& lesson) {
    const record::Date& date = lesson.date.value;
    return !date.ok() || (date >= term.from.value && date <= term.to.value);
}

namespace {

void tell_strangers(const record::Term& term, const std::set<std::string>& known,
                    diag::Findings& findings) {
    const std::vector<std::string_view> codes(known.begin(), known.end());
    for (const auto& student : term.students) {
        const std::string& code = student.code.value;
        if (code.empty() || known.contains(code)) continue;
        const std::string_view close = diag::nearest(code, codes);
        findings.warning(student.code.span, "nobody has the code " + diag::quote(code),
                         close.empty() ? "take it out of the register, or add the student to "
                                         "people.yaml"
                                       : "did you mean '" + std::string(close) + "'?");
    }
}

} // namespace

void check_register(const record::Term& term, const diag::Source& source,
                    const std::vector<const record::Lesson*>& lessons, const Academy& academy,
                    diag::Findings& findings) {
    if (!term.lists_students) return;
    std::set<std::string> known;
    if (academy.people)
        for (const auto& person : academy.people->list)
            known.insert(person.code.value);
    std::map<std::string, int> taught;
    for (const auto* lesson : lessons) {
        if (lesson->student.code.empty()) continue;
        known.insert(lesson->student.code);
        if (in_term(term, *lesson)) ++taught[lesson->student.code];
    }
    tell_strangers(term, known, findings);
    for (const auto& [code, count] : taught)
        if (std::ranges::none_of(term.students,
                                 [&code = code](const auto& s) { return s.code.value == code; }))
            findings.warning(source.whole(),
                             diag::quote(code) + " has " +
                                 (count == 1 ? "a lesson" : std::to_string(count) + " lessons") +
                                 " in this term and is not in the register",
                             "add a line '- " + code + "' to 'students' for a report");
}

} // namespace cli
