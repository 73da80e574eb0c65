// The bag as a ladder: each club a rung at its loft, and what loft the ball really met.
#pragma once

#include "figure/easel.hpp"
#include "figure/symbol.hpp"

#include <cstdint>
#include <string>
#include <vector>

namespace figure {

struct Rung {
    std::string club; ///< "8 iron", as it stands inside a sentence
    double loft = 0;  ///< degrees
    bool in_hand = false;
};

/// Where an effective loft comes from.
enum class LoftOrigin : std::uint8_t {
    measured,
    leaned, ///< measured, and the usual lean of the shaft added back
    launch,
    face
};

/// The effective loft of one block.
struct LoftMark {
    Symbol symbol = Symbol::before;
    std::string name; ///< "Before"
    double loft = 0;  ///< degrees
    LoftOrigin origin = LoftOrigin::measured;
    std::vector<std::string> plays_like; ///< one club, or the two it lies between; may be empty
};

struct LadderInput {
    std::vector<Rung> rungs; ///< in any order
    std::vector<LoftMark> marks;
    bool usual_bag = false; ///< the rungs are common practice, not the student's own
    std::string message;    ///< alternative text
};

/// More loft stands higher. Only rungs near the marks and the club in hand are drawn. `height` is a
/// wish; labels may need more.
ink::Drawing loft_ladder(const Easel& easel, const LadderInput& input, double width, double height);

} // namespace figure
