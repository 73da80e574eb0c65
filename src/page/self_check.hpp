// The program checks its own pages: no text outside its page's content, over other text, or too
// small.
#pragma once

#include "page/flow.hpp"
#include "text/typesetter.hpp"

namespace page {

/// Faults of the finished sheets, in page order. `typesetter` tells letters that no font can show.
std::vector<Fault> self_check(const Book& book, const theme::Theme& theme,
                              const text::Typesetter& typesetter);

} // namespace page
