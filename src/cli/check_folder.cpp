#include "cli/check_folder.hpp"

#include "cli/check_other.hpp"
#include "cli/commands.hpp"
#include "cli/doubt_returned.hpp"
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
#include <tuple>

namespace cli {

namespace {

/// The academies of these records, the folder's own first.
std::vector<std::shared_ptr<const Academy>>
academies_of(const Workshop& workshop, const fs::path& folder, const Reads& reads) {
    std::vector<std::shared_ptr<const Academy>> out{workshop.academy(folder)};
    for (const auto& read : reads)
        if (read->academy && std::ranges::find(out, read->academy) == out.end())
            out.push_back(read->academy);
    return out;
}

/// Findings of shared files, each once however many lessons have met it.
class Shared {
  public:
    void add(const diag::Finding& finding) {
        const diag::Span& at = finding.span;
        if (told_.emplace(at.source ? at.source->name() : "", at.line, at.column, finding.what)
                .second)
            people::hand_on({finding}, found_);
    }
    const diag::Findings& found() const { return found_; }

  private:
    std::set<std::tuple<std::string, std::uint32_t, std::uint32_t, std::string>> told_;
    diag::Findings found_;
};

/// Who has no lesson, when the folder is the whole academy.
void tell_untaught(const Academy& academy, const fs::path& folder, const Reads& reads,
                   Shared& shared) {
    if (lies_outside(academy.people_path, folder)) return;
    std::set<std::string> taught;
    for (const auto& read : reads)
        taught.insert(read->lesson.student.code);
    for (const people::Person& person : academy.people->list)
        if (!person.code.value.empty() && !taught.contains(person.code.value))
            shared.add({diag::Severity::note, person.code.span,
                        diag::quote(person.code.value) + " has no lesson below this folder",
                        "begin one with: lessonleaf begin FOLDER --student " + person.code.value});
}

/// What is wrong in house.yaml, people.yaml and drills.yaml.
Shared of_files(const Workshop& workshop, const fs::path& folder, const Reads& reads) {
    Shared shared;
    for (const auto& academy : academies_of(workshop, folder, reads)) {
        diag::Findings own;
        people::hand_on(academy->findings.list(), own);
        if (academy->people) check_entries(workshop, *academy->people, own);
        for (const auto& finding : own.list())
            shared.add(finding);
        if (academy->people) tell_untaught(*academy, folder, reads, shared);
    }
    for (const auto& read : reads)
        for (const auto& finding : read->findings.list())
            if (is_shared(finding)) shared.add(finding);
    return shared;
}

std::string day_of(const record::Lesson& lesson) { return record::iso(lesson.date.value); }

/// Two lessons of one student that bear one number.
void check_number(Read& read, std::map<std::string, const Read*>& numbers) {
    const record::Lesson& lesson = read.lesson;
    if (!lesson.number || lesson.revision > 1) return;
    const std::string number = std::to_string(*lesson.number);
    const auto [same, fresh] = numbers.emplace(lesson.student.code + " " + number, &read);
    const Read& other = *same->second;
    if (fresh || other.lesson.date.value == lesson.date.value) return;
    read.findings.warning(read.sources.front().whole(),
                          "this is lesson " + number + " of " + lesson.student.code +
                              ", and so is that of " + day_of(other.lesson),
                          "correct 'lesson' here or in " + other.sources.front().name());
}

/// Lessons that would get one file name, and codes that two people share.
void check_pairs(const Reads& reads) {
    std::map<std::string, const Read*> names, codes, numbers;
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
        check_number(*read, numbers);
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

/// What came back, against the lesson before where the record names none.
void check_returned(const Reads& reads) {
    for (const auto& read : reads) {
        const record::Lesson& now = read->lesson;
        if (now.returned.empty() || !read->earlier.empty() || now.student.code.empty()) continue;
        const Read* last = nullptr;
        for (const auto& other : reads)
            if (const auto& then = other->lesson;
                then.student.code == now.student.code && then.date.value.ok() &&
                then.date.value < now.date.value &&
                (!last || last->lesson.date.value < then.date.value))
                last = other.get();
        if (!last) continue;
        doubt_returned(now, last->lesson, read->library, read->findings);
        const fs::path there = fs::path(last->sources.front().name()).parent_path();
        const fs::path here = fs::path(read->sources.front().name()).parent_path();
        if (there.parent_path() != here.parent_path() || there == here) continue;
        read->findings.note(now.returned.front().drill.span.source ? now.returned.front().drill.span
                                                                   : read->sources.front().whole(),
                            "'returned' stands here without 'last lesson', so the sheet of " +
                                day_of(last->lesson) + " is not looked back at",
                            "add the line 'last lesson: ../" + there.filename().string() +
                                "' for what was planned and kept");
    }
}

enum class State { ready, faulty, waiting };

/// What the record itself is told; it waits when only a shared file is faulty.
State tell_record(const Read& read, const fs::path& record, bool strict) {
    diag::Findings own;
    bool waits = false;
    for (const diag::Finding& finding : read.findings.list()) {
        if (!is_shared(finding))
            people::hand_on({finding}, own);
        else if (finding.severity == diag::Severity::error)
            waits = true;
    }
    if (!tell(own, strict)) return State::faulty;
    if (waits) return State::waiting;
    std::cout << record.string() << ": ready to print\n";
    return State::ready;
}

void tell_strays(const fs::path& folder) {
    for (const fs::path& path : strays_below(folder))
        std::cerr << stray(path.string());
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
    if (below.paths.empty()) {
        tell_strays(folder);
        return no_file;
    }
    int worst = below.faults.empty() ? all_written : no_file;
    Reads reads;
    for (const std::string& record : below.paths) {
        auto read = check_record(workshop, record, type);
        if (!read->readable)
            worst = std::max<int>(worst, cannot_read(record));
        else
            reads.push_back(std::move(read));
    }
    check_pairs(reads);
    check_returned(reads);
    if (!tell(of_files(workshop, folder, reads).found(), strict))
        worst = std::max<int>(worst, findings);
    std::size_t ready = 0, waiting = 0;
    std::set<std::string> students;
    for (const auto& read : reads) {
        const State state = tell_record(*read, read->sources.front().name(), strict);
        ready += state == State::ready ? 1U : 0U;
        waiting += state == State::waiting ? 1U : 0U;
        students.insert(read->lesson.student.code + " " + read->lesson.student.name);
    }
    tell_strays(folder);
    if (waiting > 0)
        std::cerr << count_of(waiting, "lesson waits", "lessons wait")
                  << " for house.yaml, people.yaml or drills.yaml to be put right, see above\n";
    if (ready < reads.size()) worst = std::max<int>(worst, findings);
    std::cout << count_of(students.size(), "student", "students") << ", "
              << count_of(reads.size(), "lesson", "lessons") << ", " << ready
              << " ready to print\n";
    return worst;
}

} // namespace cli
