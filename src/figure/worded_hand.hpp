// A small hand with words beside it, for pages that have no room for a legend.
#pragma once

#include "figure/easel.hpp"
#include "hand/hand.hpp"

#include <span>
#include <string>

namespace figure {

/// Words at the side with a leader to an anchor of the picture.
struct AnchorWords {
    std::string anchor, words;
};

/// The hand at the left, as large as the box and the words' column allow; the words at the right
/// for both hands. Words whose anchor the picture does not have are left out.
ink::Drawing worded_hand(const Easel& easel, const hand::Picture& picture, unit::Hand hand,
                         std::span<const AnchorWords> words, ink::Size box);

} // namespace figure
