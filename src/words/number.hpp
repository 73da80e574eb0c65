// The only place where a number becomes text.
#pragma once

#include <string>
#include <string_view>

namespace words {

/// U+2212; a hyphen never stands for minus.
inline constexpr std::string_view minus_sign = "\u2212";
/// U+00A0, between a number and its unit.
inline constexpr std::string_view no_break_space = "\u00A0";

/// The value with that many decimals (0 to 9), the language's decimal mark and, from five digits on
/// (four in English, German, French and Swedish), its mark between thousands. Rounds the shortest
/// decimal form half away from zero, so 0.15 gives 0.2; what rounds to nought has no sign.
/// Throws std::logic_error for a value that is not finite: what was not measured is not a number.
std::string fixed(double value, int decimals, std::string_view language);

/// A whole number in the same form.
std::string whole(long value, std::string_view language);

/// The number that `fixed` shows, for comparing with what the reader sees.
double rounded(double value, int decimals);

} // namespace words
