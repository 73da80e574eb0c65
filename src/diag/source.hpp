// A file's text and places in it.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace diag {

/// The text of one file. Lives as long as the findings that point into it.
class Source {
  public:
    Source(std::string name, std::string text);

    const std::string& name() const { return name_; }
    const std::string& text() const { return text_; }
    /// The line without its end; lines count from 1. Empty when there is no such line.
    std::string_view line(std::uint32_t number) const;
    std::uint32_t line_count() const { return static_cast<std::uint32_t>(starts_.size()); }

  private:
    std::string name_;
    std::string text_;
    std::vector<std::size_t> starts_;
};

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

} // namespace diag
