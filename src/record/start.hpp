// What a record may leave out, because it stands in the files around it.
#pragma once

#include "diag/finding.hpp"
#include "record/lesson.hpp"

#include <array>
#include <functional>

namespace record {

/// How much of a name is printed.
enum class PrintName : std::uint8_t { as_written, first_name, initials, code };
inline constexpr std::array<std::string_view, 4> print_names{"as written", "first name", "initials",
                                                             "code"};

/// Where a record starts. Places in it are places in the files that it came from.
struct Start {
    Lesson lesson;                       ///< what the record leaves out stays as it is here
    bool known = false;                  ///< the student is known: hand and age need not be written
    bool told = false;                   ///< the student's code is unknown, and a finding says so
    std::string first_name, family_name; ///< of a known student
    PrintName print_name = PrintName::as_written;
    std::vector<Coach> coaches;        ///< one of them can be called by a part of the name
    std::map<unit::Measure, Aim> aims; ///< the usual range and worth of an aim
    ShotSource shots;                  ///< the usual table; its file may be empty
};

/// Finds the start for the student whom the record names by `code` (empty when it names none).
/// `bare`: nothing but the code is written, so an unknown one is an error.
using FindStart = std::function<Start(const diag::Located<std::string>& code, bool bare)>;

/// The name as it is printed; empty when the code stands in.
std::string shortened(const std::string& name, const Start& start);

} // namespace record
