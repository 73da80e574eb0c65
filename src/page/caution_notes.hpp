// When to stop, and the rules behind the words, as groups of notes.
#pragma once

#include "page/log_notes.hpp"

namespace page {

/// When to stop, boxed.
NoteGroup stop_box(const figure::Easel& easel);

/// The rule behind the verdict words.
NoteGroup rules_of_words(const figure::Easel& easel, theme::Text style = theme::Text::body);

} // namespace page
