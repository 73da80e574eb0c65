// UTF-8 as far as places and excerpts need it.
#pragma once

#include <cstdint>
#include <string_view>

namespace diag {

/// One decoded code point: its value and how many bytes it takes. A byte that is not UTF-8 counts
/// as one code point of one byte with `valid` false.
struct CodePoint {
    char32_t value = 0;
    std::uint32_t bytes = 1;
    bool valid = true;
};

/// The code point at the start of `text`, which is not empty.
CodePoint first_code_point(std::string_view text);

/// How many code points `text` holds.
std::uint32_t code_points(std::string_view text);

/// How many terminal columns a code point takes: 0, 1 or 2.
int columns_of(char32_t value);

} // namespace diag
