// Text and bytes as mail carries them. Internal to output.
#pragma once

#include <string>
#include <string_view>

namespace output {

inline constexpr std::size_t longest_mail_line = 76; ///< RFC 2045, 6.7 and 6.8

/// RFC 2045, 6.8, in lines of 76 characters that end with CR LF.
std::string base64_lines(std::string_view bytes);
/// The same without line ends.
std::string base64(std::string_view bytes);

/// RFC 2045, 6.7, of text whose lines end with '\n'.
std::string quoted_printable(std::string_view text);

/// Words of a header that begins at `column`: as they are when they are short ASCII, else RFC 2047
/// encoded words, folded.
std::string header_text(std::string_view text, std::size_t column);
/// A display name: an atom sequence or a quoted string when it is short ASCII, else encoded words.
std::string header_phrase(std::string_view name, std::size_t column);

} // namespace output
