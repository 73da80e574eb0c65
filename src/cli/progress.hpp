// How far a long run has come, on a terminal only.
#pragma once

#include <chrono>
#include <cstddef>
#include <string>

namespace cli {

/// One line that is written over itself, at most ten times a second. Nothing when standard error is
/// no terminal.
class Progress {
  public:
    explicit Progress(std::size_t count);

    void show(std::size_t done, std::size_t failed);
    /// Takes the line away, so that something else can be printed.
    void clear();

  private:
    using Clock = std::chrono::steady_clock;

    std::size_t count_;
    bool terminal_;
    bool shown_ = false;
    Clock::time_point start_ = Clock::now(), last_ = start_;
};

/// "about 2 min left"; empty in the first second, when nobody can tell.
std::string time_left(double seconds_so_far, std::size_t done, std::size_t count);

} // namespace cli
