// The if-then plan: what was typed stands in the sentence, the rest is a rule to write on.
#pragma once

#include "page/story.hpp"

#include <string_view>

namespace page {

/// Both sentences of the plan for drill `number`.
ink::Drawing drill_plan(const figure::Easel& easel, const record::Plan& plan,
                        std::string_view number, double width,
                        theme::Text text = theme::Text::lead);

/// One sentence in which every U+001F is a place to write on.
ink::Drawing sentence_to_fill(const figure::Easel& easel, std::string_view sentence, double width,
                              theme::Text text = theme::Text::lead);

} // namespace page
