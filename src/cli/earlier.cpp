#include "cli/earlier.hpp"

#include "words/date.hpp"

#include <algorithm>

namespace cli {

namespace {

constexpr std::size_t most_lessons = 40; ///< about a year; older ones change nothing any more

/// A folder means the lesson.yaml in it.
fs::path place_of(const std::string& written, const fs::path& record) {
    fs::path path = record.parent_path() / written;
    std::error_code gone;
    if (fs::is_directory(path, gone)) path /= "lesson.yaml";
    return path;
}

/// The way to the lesson when its folder lies beside the record's own, as it usually does.
std::string way_beside(const std::string& written, const fs::path& record) {
    std::error_code gone;
    const fs::path own = fs::absolute(record, gone).lexically_normal().parent_path();
    const fs::path there = own.parent_path() / written;
    const bool lesson =
        fs::exists(fs::is_directory(there, gone) ? there / "lesson.yaml" : there, gone);
    if (!lesson || written.empty() || there == own) return {};
    return "it lies one folder up: last lesson: " + (fs::path("..") / written).string();
}

const std::string& called(const record::Student& student) {
    return student.code.empty() ? student.name : student.code;
}

/// Whether the two can be two lessons of one student; tells what is wrong.
bool fits(const record::Lesson& now, const record::Lesson& then, diag::Findings& findings) {
    const auto& link = now.last_lesson;
    if (called(now.student) != called(then.student)) {
        findings.error(link.span,
                       "'last lesson' is a lesson of '" + called(then.student) +
                           "', this one is of '" + called(now.student) + "'",
                       "name the record of this student's lesson before");
        return false;
    }
    if (then.date.value >= now.date.value) {
        findings.error(link.span,
                       "'last lesson' is of " + words::date_iso(then.date.value) +
                           ", not before this one of " + words::date_iso(now.date.value),
                       "name the lesson before this one, or correct one of the dates");
        return false;
    }
    return true;
}

/// The record that `now` names as its last lesson; nothing when it cannot be one.
std::unique_ptr<Read> read_one(const Workshop& workshop, const record::Lesson& now,
                               const fs::path& record, const fs::path& home,
                               diag::Findings& findings) {
    const fs::path path = place_of(now.last_lesson.value, record);
    if (!home.empty() && lies_outside(path, home)) {
        findings.error(now.last_lesson.span,
                       "the last lesson '" + now.last_lesson.value +
                           "' lies outside the folder of these lessons",
                       "keep a student's lessons side by side, or allow it with --outside");
        return nullptr;
    }
    auto one = workshop.read_alone(path);
    const auto& link = now.last_lesson;
    if (!one->readable) {
        const std::string way = way_beside(link.value, record);
        findings.error(link.span, "the last lesson '" + link.value + "' cannot be read",
                       !way.empty()
                           ? way
                           : "give the way from this record to the other, such as 'last lesson: "
                             "../2026-04-30/lesson.yaml', or leave the line out");
        return nullptr;
    }
    if (!one->findings.clean()) {
        const auto faults = one->findings.errors();
        findings.error(link.span,
                       "the last lesson '" + link.value + "' has " +
                           (faults == 1 ? "a fault of its own"
                                        : std::to_string(faults) + " faults of its own"),
                       "see them with: lessonleaf check " + path.string());
        return nullptr;
    }
    return fits(now, one->lesson, findings) ? std::move(one) : nullptr;
}

} // namespace

void keep_target(Read& read) {
    record::Lesson& now = read.lesson;
    if (read.earlier.empty() || now.has_before || now.has_after || now.target.any()) return;
    now.target = read.earlier.front()->lesson.target;
}

void read_earlier(const Workshop& workshop, Read& read, const fs::path& record) {
    std::error_code gone;
    fs::path at = record;
    const fs::path home =
        read.outside ? fs::path()
                     : fs::absolute(record, gone).lexically_normal().parent_path().parent_path();
    const record::Lesson* now = &read.lesson;
    diag::Findings further; // faults of older links are told when those sheets are printed
    while (!now->last_lesson.value.empty() && read.earlier.size() < most_lessons) {
        auto one =
            read_one(workshop, *now, at, home, read.earlier.empty() ? read.findings : further);
        if (!one) return;
        at = one->record;
        now = &one->lesson;
        read.earlier.push_back(std::move(one));
    }
}

} // namespace cli
