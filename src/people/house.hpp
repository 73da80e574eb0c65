// house.yaml: what holds for every lesson of one academy.
#pragma once

#include "diag/finding.hpp"
#include "record/lesson.hpp"
#include "record/start.hpp"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace people {

/// The house as it is written; empty parts leave the program's own ways.
struct House {
    std::string academy;
    std::vector<record::Coach> coaches; ///< the first is the usual one; each has the academy
    std::string place;

    std::optional<std::string> language;
    std::optional<record::Paper> paper;
    std::optional<unit::Units> units;
    std::optional<bool> large_print;
    record::PrintName print_name = record::PrintName::as_written;
    bool shortens_names = false; ///< `print name` is written

    record::ShotSource shots; ///< the usual table: file, sign, units, columns, blocks, set aside
    record::Conditions conditions;
    std::map<unit::Measure, record::Aim> aims; ///< the usual range and worth, one a measure

    record::Marks marks; ///< files are beside house.yaml

    std::optional<int> kept_months; ///< how long records are kept after the last lesson
};

/// Reads house.yaml; faults go to `findings`.
House read_house(const diag::Source& source, diag::Findings& findings);

} // namespace people
