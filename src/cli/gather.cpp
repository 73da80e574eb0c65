#include "cli/gather.hpp"

#include <algorithm>

namespace cli {

namespace {

bool is_replaced_by(const Read& old, const Read& other) {
    const record::Lesson &a = old.lesson, &b = other.lesson;
    return &old != &other && a.date.value.ok() && a.date.value == b.date.value &&
           a.student.code == b.student.code && a.revision < b.revision;
}

} // namespace

void drop_replaced(Reads& lessons) {
    std::vector<const Read*> replaced;
    for (const auto& old : lessons)
        if (std::ranges::any_of(lessons,
                                [&](const auto& other) { return is_replaced_by(*old, *other); }))
            replaced.push_back(old.get());
    std::erase_if(lessons, [&](const auto& read) {
        return std::ranges::find(replaced, read.get()) != replaced.end();
    });
}

std::string two_of_one_day(const Reads& lessons) {
    std::string out;
    for (std::size_t i = 1; i < lessons.size(); ++i) {
        const Read &a = *lessons[i - 1], &b = *lessons[i];
        if (!a.lesson.date.value.ok() || a.lesson.date.value != b.lesson.date.value) continue;
        out +=
            "lessonleaf: '" + a.record.string() + "' and '" + b.record.string() +
            "' are lessons of one day\n  hint: correct a date, or write 'revision: 2' in the one "
            "that replaces the other\n";
    }
    return out;
}

bool hides_its_student(const Read& read) {
    return read.lesson.student.code.empty() && !(read.readable && read.findings.clean());
}

std::string likely_owner(const Read& read, const Reads& lessons) {
    const fs::path beside = read.record.parent_path().parent_path();
    std::string owner;
    for (const auto& other : lessons) {
        const std::string& code = other->lesson.student.code;
        if (code.empty() || other->record.parent_path().parent_path() != beside) continue;
        if (!owner.empty() && owner != code) return {};
        owner = code;
    }
    return owner;
}

std::vector<Gathered> gather(const Workshop& workshop, Reads lessons,
                             const text::Typesetter& type) {
    std::vector<Gathered> out;
    for (auto& read : lessons) {
        Gathered one{std::move(read), nullptr};
        if (one.read->readable && one.read->findings.clean())
            one.sheet = std::make_unique<Sheet>(workshop, *one.read, type);
        out.push_back(std::move(one));
    }
    return out;
}

} // namespace cli
