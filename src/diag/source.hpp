// A file's text and places in it.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace diag {

class Source;

/// A place in a file. Line 0 means the file as a whole. Columns count code points from 1.
struct Span {
    const Source* source = nullptr;
    std::uint32_t line = 0;
    std::uint32_t column = 0;
    std::uint32_t length = 1;
};

/// A value that remembers where it was written.
template <class T>
struct Located {
    T value{};
    Span span;
};

/// The text of one file. Lives as long as the findings that point into it. A leading UTF-8 byte
/// order mark is dropped. Not copied or moved: spans hold its address.
class Source {
  public:
    Source(std::string name, std::string text);
    Source(const Source&) = delete;
    Source& operator=(const Source&) = delete;

    const std::string& name() const { return name_; }
    const std::string& text() const { return text_; }
    /// The line without its end; lines count from 1. Empty when there is no such line.
    std::string_view line(std::uint32_t number) const;
    std::uint32_t line_count() const { return static_cast<std::uint32_t>(starts_.size()); }

    /// The place of `bytes` bytes from byte `offset`; ends with its line at the latest.
    Span at(std::size_t offset, std::size_t bytes = 1) const;
    /// The place in a line from byte `column` (counted from 0), cut at the line's end.
    Span in_line(std::uint32_t line, std::size_t column, std::size_t bytes = 1) const;
    Span whole() const { return {this, 0, 0, 1}; }

  private:
    std::string name_;
    std::string text_;
    std::vector<std::size_t> starts_;
};

} // namespace diag
