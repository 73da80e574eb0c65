// Streams of a PDF, compressed once and fast. Internal to output.
#pragma once

#include <string>
#include <string_view>

namespace output {

/// While it lives, zlib streams that this thread opens (Cairo's and qpdf's) store their bytes as
/// they are: what is written is read again in a moment, and packed for good at the end.
class Unpacked {
  public:
    Unpacked();
    ~Unpacked();
    Unpacked(const Unpacked&) = delete;
    Unpacked& operator=(const Unpacked&) = delete;
};

/// `bytes` as a zlib stream (RFC 1950), by libdeflate.
std::string packed(std::string_view bytes);

} // namespace output
