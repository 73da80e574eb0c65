// SHA-256 (FIPS 180-4): what `sha256sum` prints.
#pragma once

#include <string>
#include <string_view>

namespace output {

/// 64 small hexadecimal digits.
std::string sha256(std::string_view bytes);

} // namespace output
