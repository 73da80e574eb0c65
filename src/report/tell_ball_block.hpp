// One block of shots as the ball room wants it, its middle shot and its flights.
#pragma once

#include "page/ball_story.hpp"
#include "shots/table.hpp"

#include <vector>

namespace report {

/// What one shot was measured to do, beyond ball::Shot.
struct Seen {
    ball::Shot shot;
    std::optional<unit::Degrees> launch, axis;
    std::optional<unit::Rpm> spin;
    std::optional<unit::Metres> apex;
};

/// The counted shots of one block, in their order. What the table did not have but was derived
/// (curve) is used all the same; start direction only when measured.
std::vector<Seen> counted_shots(const shots::Table& table, shots::Block block);

std::vector<ball::Shot> ball_shots(const std::vector<Seen>& seen);

/// Medians; a column that fewer than half of the shots have stays empty.
Seen middle_of(const std::vector<Seen>& seen);

/// Effective loft of a shot, with the club where it is known.
ball::EffectiveLoft loft_of(const Seen& seen, const page::BallStory& ball);

/// Nothing without face, path, an effective loft and a speed.
std::optional<ball::Delivery> delivery_of(const Seen& seen, const page::BallStory& ball);

/// The flight: measured launch conditions where the table has them, else those of the impact model.
/// Nothing without either, and nothing below the range of the flight model.
std::optional<page::DrawnFlight> flight_of(const Seen& seen, const page::BallStory& ball);

} // namespace report
