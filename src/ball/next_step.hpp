// What is left, and whose it is: the remaining miss shared between face and path.
#pragma once

#include "ball/air.hpp"
#include "ball/impact.hpp"

#include <cstdint>

namespace ball {

enum class NextStep : std::uint8_t { mostly_face, mostly_path, both, little_left };

struct Remaining {
    NextStep step = NextStep::little_left;
    /// Parts of the miss, adding up to 1. One can be negative: it takes away from what the other
    /// does. Both 0 without a miss.
    double face = 0, path = 0;
    unit::Metres miss; ///< start line and curve together: root of the sum of their squares
    unit::Metres
        start; ///< landing spot of a ball without curve from the target line, right positive
    unit::Metres curve; ///< right positive
};

/// Below this part of the carry a miss is little: 4 m of 130. Common practice, no source.
inline constexpr double little_miss = 0.03;
/// From this part on a miss is mostly one factor's. Our own choice, no source.
inline constexpr double most_of_it = 2.0 / 3;

/// Shapley shares of the modelled miss, `after` holding the medians after the lesson, against the
/// wanted face and path. Wind is left out: it is no miss of the player's.
Remaining what_next(const Delivery& after, const Head& head, const Air& air,
                    unit::Degrees wanted_face = {}, unit::Degrees wanted_path = {});

} // namespace ball
