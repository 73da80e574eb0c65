// Colours as a coach writes them, and whether they carry text.
#pragma once

#include "diag/finding.hpp"
#include "ink/mark.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace theme {

/// "#005c99" or "#05c"; nothing for anything else.
std::optional<ink::Colour> colour_of(std::string_view text);
std::string text_of(const ink::Colour& colour); ///< "#005c99"

/// Contrast ratio of two colours, 1 to 21 (WCAG 2.2, "contrast ratio").
double contrast(const ink::Colour& a, const ink::Colour& b);

/// Contrast that text needs on white (WCAG 2.2, success criterion 1.4.3, level AA).
inline constexpr double text_contrast = 4.5;

/// The same hue, darkened until its contrast on white reaches `least`; unchanged when it does.
ink::Colour darkened(ink::Colour colour, double least = text_contrast);

/// The accent a coach chose, fit to carry text. What is no colour is an error; one that is too
/// light is a warning and comes back darker.
std::optional<ink::Colour> accent_of(const diag::Located<std::string>& written,
                                     diag::Findings& findings);

} // namespace theme
