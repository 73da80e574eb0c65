// The ball's part of a story: effective loft, flights, credit and what is left.
#pragma once

#include "drills/clubs.hpp"
#include "page/story.hpp"
#include "words/catalogue.hpp"

#include <span>

namespace report {

/// Computes story.ball from the counted shots; nothing without a shot table. `clubs` is the typical
/// bag; `speaker`, when given, lets a club be recognised by its printed name.
///
/// Which club: the loft of the record; else that of the typical club with this name; else none, and
/// then there is no ladder. A missing lie is that of the typical club of the nearest loft.
///
/// Plays like: an effective loft is measured with the shaft as it leaned at impact, while clubs are
/// compared as they stand on the ground. So the lean of a square strike is added back: the club's
/// own loft, less the effective loft of the after block, more what the after face adds by being
/// open. The after block then plays as the club with its face alone, and the before block differs
/// from it by the difference of the two effective lofts. Without an after block before takes its
/// place. A lean beyond 15 degrees either way says that club and table do not belong together: then
/// nothing is compared.
void tell_ball(page::Story& story, std::span<const drills::TypicalClub> clubs,
               const words::Speaker* speaker = nullptr);

/// Attack angle where none was measured: level with a driver, falling to 4 degrees down from 32
/// degrees of loft on. Common practice, no source.
unit::Degrees usual_attack(unit::Degrees loft);

} // namespace report
