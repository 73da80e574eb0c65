// A window about nought that fits what a student did before and after: the pass mark of a drill.
#pragma once

#include <cstddef>
#include <optional>
#include <span>

namespace measure {

inline constexpr std::size_t shots_for_window = 5; ///< a side; fewer give none
inline constexpr double passed_least = 0.35,
                        passed_most = 0.65;   ///< "about half" of the before-shots
inline constexpr double passed_mostly = 0.65; ///< of the after-shots, at least

struct Window {
    std::size_t index = 0;             ///< which of the half widths
    double half = 0;                   ///< in the measure's own unit
    std::size_t before = 0, after = 0; ///< shots that lie inside, the edge included
    std::size_t of_before = 0, of_after = 0;
};

/// Of the half widths that can be built on the ground, the one that about half of the before-shots
/// and most of the after-shots pass: nearest to half before, then most after, then the narrowest.
/// Nothing when none does, or with fewer than five shots a side.
std::optional<Window> window(std::span<const double> before, std::span<const double> after,
                             std::span<const double> halves);

} // namespace measure
