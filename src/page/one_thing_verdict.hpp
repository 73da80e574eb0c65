// What page 1 says of the shots.
#pragma once

#include "page/block.hpp"
#include "page/story.hpp"

#include <optional>
#include <vector>

namespace page {

/// The verdict and a small strip of every shot of the aim; with room, what it did to the ball.
std::optional<Block> verdict_block(const figure::Easel& easel, const Story& story, bool with_ball);

/// The verdict for a narrow side, nothing beside anything: the words, then the strip.
std::vector<Block> narrow_verdict(const figure::Easel& easel, const Story& story);

/// What the ball did, across a side of its own.
std::optional<Block> ball_across(const figure::Easel& easel, const Story& story);

} // namespace page
