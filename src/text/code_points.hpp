// UTF-8 as code points.
#pragma once

#include <string_view>

namespace text {

/// The code point that starts at `at`, which moves behind it. A broken sequence is U+FFFD and
/// takes one byte.
inline char32_t next_code_point(std::string_view utf8, std::size_t& at) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(utf8[i]); };
    const unsigned char lead = byte(at);
    const std::size_t length = lead < 0x80   ? 1
                               : lead < 0xC2 ? 0
                               : lead < 0xE0 ? 2
                               : lead < 0xF0 ? 3
                               : lead < 0xF5 ? 4
                                             : 0;
    char32_t code = length == 1 ? lead : lead & (0xFFu >> (length + 1));
    bool whole = length != 0 && at + length <= utf8.size();
    for (std::size_t i = 1; whole && i < length; ++i) {
        whole = (byte(at + i) & 0xC0) == 0x80;
        code = code << 6 | (byte(at + i) & 0x3F);
    }
    at += whole ? length : 1;
    return whole ? code : char32_t{0xFFFD};
}

} // namespace text
