// The loop in words: what was planned, what was done, what was kept, what comes now.
#pragma once

#include "page/story.hpp"

#include <string>
#include <vector>

namespace page {

/// "loop.promote": the sentence of a step of the repeat rule; with ".why" the reason on the drill's
/// own page.
std::string step_key(drills::Step step);

/// "B Blend" with its letter.
std::string stage_words(const words::Speaker& words, unit::Stage stage);

/// "Kept.", "Not kept yet."; empty without a cold test.
std::string kept_head(const Story& story, const words::Speaker& words);

/// What the cold shots kept, with the part and its range; empty without a cold test that can be
/// held against the lesson before.
std::string kept_words(const Story& story, const words::Speaker& words);

/// Why the cold shots are not held against the last change, when it is the club; else empty.
std::string other_club_words(const Story& story, const words::Speaker& words);

/// Two lines for page 1: planned, done, kept. Empty when nothing came back.
std::string since_last_time(const Story& story, const words::Speaker& words);

/// Every line that came back, in full; the step last, where the sheet follows it.
std::vector<std::string> came_back(const Story& story, const words::Speaker& words);

/// The answer for the place where the last sheet left its empty boxes; empty when there is none.
std::string cold_answer(const Story& story, const words::Speaker& words);

} // namespace page
