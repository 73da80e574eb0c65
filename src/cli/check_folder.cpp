#include "cli/check_folder.hpp"

#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/lessons_below.hpp"
#include "cli/records.hpp"
#include "cli/sheet.hpp"
#include "people/start.hpp"
#include "record/read_date.hpp"
#include "report/practice_notes.hpp"

#include <algorithm>
#include <iostream>
#include <set>

namespace cli {

namespace {

using Reads = std::vector<std::unique_ptr<Read>>;

/// The academies of these records, the folder's own first.
std::vector<std::shared_ptr<const Academy>>
academies_of(const Workshop& workshop, const fs::path& folder, const Reads& reads) {
    std::vector<std::shared_ptr<const Academy>> out{workshop.academy(folder)};
    for (const auto& read : reads)
        if (read->academy && std::ranges::find(out, read->academy) == out.end())
            out.push_back(read->academy);
    return out;
}

/// True when the finding is one of the files' own, which are told once for all records.
bool of_academy(const Read& read, const diag::Finding& finding) {
    if (!read.academy) return false;
    const auto same = [&](const diag::Finding& other) {
        return other.span.source == finding.span.source && other.span.line == finding.span.line &&
               other.span.column == finding.span.column && other.what == finding.what;
    };
    if (std::ranges::any_of(read.academy->findings.list(), same)) return true;
    return read.academy->people &&
           std::ranges::any_of(read.academy->people->list, [&](const people::Person& person) {
               return std::ranges::any_of(person.findings, same);
           });
}

/// What stands in house.yaml and people.yaml, each fault once, and who has no lesson.
diag::Findings of_files(const Academy& academy, const Reads& reads) {
    diag::Findings findings;
    people::hand_on(academy.findings.list(), findings);
    if (!academy.people) return findings;
    std::set<std::string> taught;
    for (const auto& read : reads)
        taught.insert(read->lesson.student.code);
    for (const people::Person& person : academy.people->list) {
        people::hand_on(person.findings, findings);
        if (!person.code.value.empty() && !taught.contains(person.code.value))
            findings.note(person.code.span,
                          diag::quote(person.code.value) + " has no lesson below this folder",
                          "begin one with: lessonleaf begin FOLDER --student " + person.code.value);
    }
    return findings;
}

std::string day_of(const record::Lesson& lesson) { return record::iso(lesson.date.value); }

/// The record's date and that of its folder.
void check_folder_date(Read& read) {
    const fs::path path = read.sources.front().name();
    const auto named = record::date_of(path.parent_path().filename().string());
    const auto& date = read.lesson.date;
    if (named && date.value.ok() && *named != date.value)
        read.findings.warning(date.span,
                              "the date is " + record::iso(date.value) + ", the folder's " +
                                  record::iso(*named),
                              "correct one of the two");
}

/// Lessons that would get one file name, and codes that two people share.
void check_pairs(const Reads& reads) {
    std::map<std::string, const Read*> names, codes;
    for (const auto& read : reads) {
        const record::Lesson& lesson = read->lesson;
        if (lesson.student.code.empty() || !lesson.date.value.ok()) continue;
        const std::string name =
            lesson.student.code + " " + day_of(lesson) + " " + std::to_string(lesson.revision);
        const auto [same, fresh] = names.emplace(name, read.get());
        if (!fresh)
            read->findings.error(lesson.date.span,
                                 "a second lesson of " + lesson.student.code + " on " +
                                     day_of(lesson),
                                 "the other is " + same->second->sources.front().name() +
                                     ": correct the date or the code of one, or write "
                                     "'revision: 2' in the one that replaces it");
        const auto [first, alone] = codes.emplace(lesson.student.code, read.get());
        const auto& other = first->second->lesson.student;
        if (!alone && !lesson.student.name.empty() && !other.name.empty() &&
            other.name != lesson.student.name)
            read->findings.error(read->sources.front().whole(),
                                 "the code " + diag::quote(other.code) + " stands for " +
                                     diag::quote(lesson.student.name) + " here and for " +
                                     diag::quote(other.name) + " in " +
                                     first->second->sources.front().name(),
                                 "give each student a code of their own");
    }
}

/// What the record itself is told; false when it cannot be printed.
bool tell_record(const Read& read, const fs::path& record, bool strict) {
    diag::Findings own;
    bool academy_faulty = false;
    for (const diag::Finding& finding : read.findings.list()) {
        if (!of_academy(read, finding))
            people::hand_on({finding}, own);
        else if (finding.severity == diag::Severity::error)
            academy_faulty = true;
    }
    if (academy_faulty)
        own.error({&read.sources.front(), 0, 0, 1},
                  "what house.yaml or people.yaml says of this "
                  "lesson is faulty",
                  "see above, and correct it there");
    const bool fine = tell(own, strict);
    if (fine) std::cout << record.string() << ": ready to print\n";
    return fine;
}

void tell_strays(const fs::path& folder) {
    for (const fs::path& path : strays_below(folder))
        std::cerr << path.string()
                  << ": note: this lesson is left out, for it is not called lesson.yaml\n"
                     "  hint: give it a folder of its own and call it lesson.yaml there\n";
}

std::string count_of(std::size_t n, const char* one, const char* many) {
    return std::to_string(n) + " " + (n == 1 ? one : many);
}

} // namespace

std::unique_ptr<Read> check_record(const Workshop& workshop, const fs::path& record,
                                   const text::Typesetter& type, bool with_notes,
                                   void (*look)(const page::Book&)) {
    auto read = workshop.read(record);
    if (!read->readable || !read->findings.clean()) return read;
    const Sheet sheet(workshop, *read, type); // layout faults are found as well
    if (!read->findings.clean()) return read;
    const auto book = sheet.book(*read);
    if (look) look(book);
    if (with_notes)
        for (const auto& note :
             report::practice_notes(sheet.story(), sheet.easel().words, read->library))
            read->findings.note(note.span, note.what, note.hint);
    return read;
}

int check_folder(const Workshop& workshop, const fs::path& folder, const text::Typesetter& type,
                 bool strict) {
    const Records below = records_of({folder.string()});
    for (const auto& fault : below.faults)
        std::cerr << fault;
    if (below.paths.empty()) return no_file;
    int worst = below.faults.empty() ? all_written : no_file;
    Reads reads;
    for (const std::string& record : below.paths) {
        auto read = check_record(workshop, record, type);
        if (!read->readable)
            worst = std::max<int>(worst, cannot_read(record));
        else
            reads.push_back(std::move(read));
    }
    for (const auto& read : reads)
        check_folder_date(*read);
    check_pairs(reads);
    for (const auto& academy : academies_of(workshop, folder, reads))
        if (!tell(of_files(*academy, reads), strict)) worst = std::max<int>(worst, findings);
    std::size_t ready = 0;
    std::set<std::string> students;
    for (const auto& read : reads) {
        ready += tell_record(*read, read->sources.front().name(), strict) ? 1U : 0U;
        students.insert(read->lesson.student.code + " " + read->lesson.student.name);
    }
    tell_strays(folder);
    if (ready < reads.size()) worst = std::max<int>(worst, findings);
    std::cout << count_of(students.size(), "student", "students") << ", "
              << count_of(reads.size(), "lesson", "lessons") << ", " << ready
              << " ready to print\n";
    return worst;
}

} // namespace cli
