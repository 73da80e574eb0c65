// Electronic-mail addresses.
#pragma once

#include <string>
#include <string_view>

namespace people {

/// Empty when `text` is an address that any post office takes: dot-atom "@" dot-atom in ASCII
/// (RFC 5322, 3.4.1), at most 64 letters before the sign and 254 in all (RFC 5321, 4.5.3.1).
/// Otherwise what to do about it.
std::string fault_of_address(std::string_view text);

} // namespace people
