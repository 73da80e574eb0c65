// Which club was in hand, and which bag it is compared with.
#pragma once

#include "drills/clubs.hpp"
#include "page/ball_story.hpp"
#include "record/lesson.hpp"
#include "words/catalogue.hpp"

#include <span>

namespace report {

/// Fills club, bag and head. See tell_ball() for the rules.
void choose_club(page::BallStory& ball, const record::Lesson& lesson,
                 std::span<const drills::TypicalClub> clubs, const words::Speaker* speaker);

} // namespace report
