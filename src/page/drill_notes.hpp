// Groups of notes about practice: what came back, and the cold tests.
#pragma once

#include "page/log_notes.hpp"
#include "page/story.hpp"

namespace page {

/// What was planned, done and counted, and the step of the repeat rule; empty when nothing came
/// back.
NoteGroup what_came_back(const figure::Easel& easel, const Story& story);

/// What the cold test kept, and the day of the next one.
NoteGroup cold_tests(const figure::Easel& easel, const Story& story);

} // namespace page
