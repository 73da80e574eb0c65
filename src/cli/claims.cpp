#include "cli/batch.hpp"

namespace cli {

std::optional<std::string> Claims::Turn::claim(const std::string& target,
                                               const std::string& record) {
    std::unique_lock lock(claims_.mutex_);
    claims_.next_.wait(lock, [&] { return claims_.turn_ == index_; });
    const auto [at, fresh] = claims_.taken_.emplace(target, record);
    lock.unlock();
    pass();
    return fresh ? std::nullopt : std::optional(at->second);
}

void Claims::Turn::pass() {
    if (std::exchange(passed_, true)) return;
    const std::lock_guard lock(claims_.mutex_);
    claims_.passed_.insert(index_);
    while (claims_.passed_.erase(claims_.turn_) > 0)
        ++claims_.turn_;
    claims_.next_.notify_all();
}

} // namespace cli
