// YAML text to a lesson, telling every fault in one run.
#pragma once

#include "diag/finding.hpp"
#include "record/lesson.hpp"
#include "record/start.hpp"

namespace record {

/// Reads one lesson record. Faults go to `findings`; the lesson holds all that could be read, and
/// is fit for use only when `findings` stayed clean. `find_start` says what the record may leave
/// out; without it the record stands alone.
Lesson read_lesson(const diag::Source& source, diag::Findings& findings,
                   const FindStart& find_start = {});

/// Rules across fields: dates in order, an aim whose measure the table can have, a drill named
/// twice, observations that contradict each other, texts longer than their place on the page (a
/// warning). `table_told`: why there is no shot table has been told.
void check_lesson(const Lesson& lesson, diag::Findings& findings, bool table_told = false);

} // namespace record
