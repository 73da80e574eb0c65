// A measured value as text: its unit, and its direction in words instead of a sign.
#pragma once

#include "unit/measure.hpp"
#include "words/catalogue.hpp"

#include <string>

namespace words {

/// Within this much of nought an angle counts as square, straight or level. Printed on the sheet.
inline constexpr double square_within_degrees = 0.5;

/// Decimals that a page shows of that measure in those units.
int decimals(unit::Measure measure, unit::Units units);

/// The size without direction, "3.2°", "142 yd", "2,650 rpm". `value` is in SI or degrees; a sign
/// stays (attack, differences of unsided measures), so give the absolute value of a sided one.
std::string quantity(unit::Measure measure, double value, const Speaker& speaker);

/// A range of sizes with its unit once: "12.0–14.0°".
std::string range(unit::Measure measure, double least, double most, const Speaker& speaker);

/// With its direction written out for this player: "3.2° right of target (open)", "square (0.3°
/// right)", "2.1° down". Measures without direction give `quantity`.
std::string side(unit::Measure measure, double value, const Speaker& speaker);

/// The same for a table cell: "3.2° R open".
std::string side_short(unit::Measure measure, double value, const Speaker& speaker);

/// The wanted range with directions: "1.0° left to 1.0° right of target".
std::string side_range(unit::Measure measure, double least, double most, const Speaker& speaker);

/// A difference of two values of a measure in words: "3.5° further left", "4 km/h more".
std::string difference(unit::Measure measure, double delta, const Speaker& speaker);

} // namespace words
