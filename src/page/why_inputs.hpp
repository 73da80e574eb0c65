// What the ball's story holds, as the figures of the page want it.
#pragma once

#include "figure/credit_bars.hpp"
#include "figure/flight_above.hpp"
#include "figure/impact_above.hpp"
#include "figure/loft_ladder.hpp"
#include "figure/scatter.hpp"
#include "page/story.hpp"

#include <optional>
#include <string>
#include <utility>
#include <vector>

namespace page {

/// A block with its symbol and its printed name; only blocks that have shots.
struct NamedBlock {
    figure::Symbol symbol = figure::Symbol::before;
    std::string name;
    const BallBlock* block = nullptr;
};
std::vector<NamedBlock> named_blocks(const BallStory& ball, const words::Speaker& words);

std::optional<figure::ScatterInput> scatter_input(const figure::Easel& easel, const Story& story);

/// Face and path at impact of before and after, for lessons whose table lacks one of the two.
std::optional<figure::ImpactInput> impact_input(const figure::Easel& easel, const Story& story);

/// Nothing without a bag to compare with.
std::optional<figure::LadderInput> ladder_input(const figure::Easel& easel, const Story& story);

/// Nothing when no block has flights.
std::optional<figure::FlightInput> flight_input(const figure::Easel& easel, const Story& story);

/// Too few in a block to say what a change came with, or what is left.
bool few_shots(const BallStory& ball);
/// The ladder's marks are not the effective lofts themselves: a lean is added back.
bool leans(const BallStory& ball);
bool flight_is_drawn(const BallStory& ball);
/// Every flight that is drawn lands where it was measured to land.
bool landings_measured(const BallStory& ball);

/// Outcomes whose change was measured and shared out and is large enough to speak of: start
/// direction and carry first, then curve and offline.
std::vector<ball::Outcome> credited(const Story& story);

figure::CreditInput credit_input(const figure::Easel& easel, const ball::Credit& credit,
                                 ball::Outcome outcome);

unit::Measure measure_of(ball::Outcome outcome);

/// Printed name of a club of the bag.
std::string club_name(const NamedClub& club, const words::Speaker& words);

} // namespace page
