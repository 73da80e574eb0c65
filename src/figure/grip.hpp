// Hands as ink: the house's line widths and tints, call-outs outside the drawing.
#pragma once

#include "figure/easel.hpp"
#include "hand/hand.hpp"

#include <string>
#include <vector>

namespace figure {

/// The picture at that width. A left-hander's is the exact mirror; text never is.
ink::Drawing hand_drawing(const theme::Theme& theme, const hand::Picture& picture, unit::Hand hand,
                          double width);

inline constexpr std::size_t most_call_outs = 4; ///< a figure

/// A number outside the drawing with a leader to an anchor of the picture.
struct CallOut {
    int number = 0;
    std::string anchor; ///< name of the anchor; a call-out whose anchor is not there is left out
};

/// A hand with its call-outs at the margins (at most four, leaders never cross) and `name` over it.
/// `width` is that of the whole; the hand takes what the margins leave.
ink::Drawing called_out(const Easel& easel, const hand::Picture& picture, unit::Hand hand,
                        const std::string& name, const std::vector<CallOut>& call_outs,
                        double width);

} // namespace figure
