#include "measure/window.hpp"

#include <algorithm>
#include <cmath>

namespace measure {

namespace {

std::size_t inside(std::span<const double> values, double half) {
    return static_cast<std::size_t>(
        std::ranges::count_if(values, [&](double value) { return std::abs(value) <= half; }));
}

double part(std::size_t n, std::size_t of) {
    return static_cast<double>(n) / static_cast<double>(of);
}

double off_half(const Window& w) { return std::abs(part(w.before, w.of_before) - 0.5); }

bool better(const Window& a, const Window& b) {
    if (off_half(a) != off_half(b)) return off_half(a) < off_half(b);
    if (a.after != b.after) return a.after > b.after;
    return a.half < b.half;
}

} // namespace

std::optional<Window> window(std::span<const double> before, std::span<const double> after,
                             std::span<const double> halves) {
    if (std::min(before.size(), after.size()) < shots_for_window) return std::nullopt;
    std::optional<Window> best;
    for (std::size_t i = 0; i < halves.size(); ++i) {
        const Window w{i,
                       halves[i],
                       inside(before, halves[i]),
                       inside(after, halves[i]),
                       before.size(),
                       after.size()};
        const double half = part(w.before, w.of_before), most = part(w.after, w.of_after);
        if (half < passed_least || half > passed_most || most < passed_mostly) continue;
        if (!best || better(w, *best)) best = w;
    }
    return best;
}

} // namespace measure
