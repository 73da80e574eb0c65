#include "cli/progress.hpp"

#include <cmath>
#include <iostream>
#include <unistd.h>

namespace cli {

std::string time_left(double seconds_so_far, std::size_t done, std::size_t count) {
    if (seconds_so_far < 1 || done == 0 || done >= count) return {};
    const double left =
        seconds_so_far / static_cast<double>(done) * static_cast<double>(count - done);
    if (left < 10) return "a few seconds left";
    if (left < 90) return "about " + std::to_string(std::lround(left / 10) * 10) + " s left";
    if (left < 5400) return "about " + std::to_string(std::lround(left / 60)) + " min left";
    return "about " + std::to_string(std::lround(left / 3600)) + " h left";
}

Progress::Progress(std::size_t count)
    : count_(count)
    , terminal_(count > 1 && isatty(STDERR_FILENO) != 0) {}

void Progress::show(std::size_t done, std::size_t failed) {
    const auto now = Clock::now();
    if (!terminal_ || now - last_ < std::chrono::milliseconds(100)) return;
    last_ = now;
    std::string line = std::to_string(done) + " of " + std::to_string(count_);
    if (failed > 0) line += ", " + std::to_string(failed) + " failed";
    const std::chrono::duration<double> so_far = now - start_;
    if (const auto left = time_left(so_far.count(), done, count_); !left.empty())
        line += ", " + left;
    std::cerr << "\r\x1b[K" << line << std::flush;
    shown_ = true;
}

void Progress::clear() {
    if (!shown_) return;
    std::cerr << "\r\x1b[K" << std::flush;
    shown_ = false;
}

} // namespace cli
