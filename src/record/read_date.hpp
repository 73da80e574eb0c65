// Dates as ISO 8601 writes them: 2026-05-14.
#pragma once

#include "record/lesson.hpp"
#include "yaml/field.hpp"

namespace record {

/// A calendar date written year-month-day (ISO 8601, extended form). Nothing for any other text and
/// for days that do not exist.
std::optional<Date> date_of(std::string_view text);

/// "2026-05-14".
std::string iso(Date date);

/// Reads a date; reports a wrong one with the way to write it.
std::optional<Date> read_date(const yaml::Field& field);

} // namespace record
