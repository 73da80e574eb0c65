// Facts and pictures as bytes and back, every number to the bit.
#pragma once

#include "hand/hand.hpp"

#include <string>
#include <string_view>

namespace hand {

std::string bytes_of(const Picture& picture);
std::string bytes_of(const Facts& facts);

/// False, and `value` is worth nothing, when the bytes are not whole.
bool read_bytes(std::string_view bytes, Picture& value);
bool read_bytes(std::string_view bytes, Facts& value);

} // namespace hand
