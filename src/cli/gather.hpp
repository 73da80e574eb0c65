// Lessons with what can be drawn of them.
#pragma once

#include "cli/lessons_below.hpp"
#include "cli/sheet.hpp"

namespace cli {

/// One record, read; its sheet when nothing is wrong with it.
struct Gathered {
    std::unique_ptr<Read> read;
    std::unique_ptr<Sheet> sheet;
    bool sound() const { return sheet && read->findings.clean(); }
    const std::string& code() const { return read->lesson.student.code; }
};

/// Takes lessons out that a newer revision of the same day and student replaces.
void drop_replaced(Reads& lessons);

/// Says of lessons of one student, by date, which are of one day: they cannot be told apart.
std::string two_of_one_day(const Reads& lessons);

/// Too faulty to tell whose it is; a sound record that names no code is nobody's by its own word.
bool hides_its_student(const Read& read);

/// Whose such a record most likely is: all lessons beside its folder are that student's. Empty when
/// nobody knows.
std::string likely_owner(const Read& read, const Reads& lessons);

std::vector<Gathered> gather(const Workshop& workshop, Reads lessons, const text::Typesetter& type);

} // namespace cli
