// Page 6: what may happen, and when to worry?
#pragma once

#include "page/block.hpp"
#include "page/log_notes.hpp"
#include "page/story.hpp"

namespace page {

/// All cautions under one title; those for juniors only on a junior's sheet.
NoteGroup cautions(const figure::Easel& easel, bool junior, theme::Text style);

/// The coach's words, what to expect, repair lines, when to stop, every caution, and lines for
/// questions down to the foot of the page.
Section expect_page(const figure::Easel& easel, const Story& story);

} // namespace page
