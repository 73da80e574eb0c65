#include "cli/tally.hpp"

#include <algorithm>

namespace cli {

namespace {

constexpr std::size_t most_listed = 15; ///< with the head and the tail: one screen

/// 1234567 as "1,234,567".
std::string counted(std::size_t n) {
    std::string out = std::to_string(n);
    for (std::size_t at = out.size(); at > 3; at -= 3)
        out.insert(at - 3, ",");
    return out;
}

std::string line_of(const Outcome& outcome) {
    if (outcome.name.empty() || outcome.why.starts_with(outcome.name)) return outcome.why;
    return outcome.name + ": " + outcome.why;
}

} // namespace

void Tally::add(const Outcome& outcome) {
    using State = Outcome::State;
    sheets_ += outcome.state != State::none;
    written_ += outcome.state == State::written;
    up_to_date_ += outcome.state == State::up_to_date;
    elsewhere_ += outcome.state == State::elsewhere;
    worst_ = std::max(worst_, outcome.exit);
    if (outcome.state != State::failed) return;
    if (++failed_ <= most_listed) failures_.push_back(line_of(outcome));
}

std::string Tally::summary(const std::string& what) const {
    std::string out = "lessonleaf: " + counted(sheets_ - elsewhere_) + " " + what + ": " +
                      counted(written_) + " written, " + counted(up_to_date_) + " up to date, " +
                      counted(failed_) + " failed\n";
    if (elsewhere_ > 0) out += "  " + counted(elsewhere_) + " more belong to the other parts\n";
    for (const auto& failure : failures_)
        out += "  failed: " + failure + "\n";
    if (failed_ > failures_.size())
        out += "  and " + counted(failed_ - failures_.size()) + " more\n";
    return out;
}

} // namespace cli
