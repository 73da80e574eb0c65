// The sentences of the page on why the ball did that.
#pragma once

#include "figure/easel.hpp"
#include "page/story.hpp"

#include <string>
#include <vector>

namespace page {

/// Which factor the change came with, in one sentence, or that the shots do not tell: the largest
/// part's range reaches zero. Empty when the model does not fit or nothing was shared out.
std::string credit_sentence(const ball::Credit& credit, ball::Outcome outcome,
                            const words::Speaker& words);

/// Words key of a factor: "credit.cause.face".
std::string cause_key(ball::Factor factor);

/// What is left and whose it is, without its head; empty when it was not computed.
std::string next_sentence(const BallStory& ball, const words::Speaker& words);

/// The effective lofts as they were met, and the lean that is added back on the ladder; empty when
/// none is.
std::string loft_sentence(const BallStory& ball, const words::Speaker& words);

/// Where the values of the page come from: the face's share, the estimates, the lean, the air.
std::vector<std::string> origin_notes(const figure::Easel& easel, const Story& story);

} // namespace page
