// The hold card: both sides of an A6 card beside each other, to cut out and keep in the bag.
#pragma once

#include "figure/easel.hpp"
#include "hand/hand.hpp"

#include <optional>
#include <string>
#include <vector>

namespace figure {

struct GripCardInput {
    std::string name, date; ///< whose card, of when
    unit::Hand hand = unit::Hand::right;
    hand::Picture target;               ///< the golfer's eye of the wanted hold
    std::optional<hand::Picture> after; ///< the golfer's eye of the hold as it was left
    double handle_diameter = 24;        ///< of the butt end, millimetres
    std::vector<std::string> checklist; ///< six lines
    std::vector<std::string> targets;   ///< the coach's own, in the coach's letter
};

inline constexpr ink::Size card_size{105 * mm, 148 * mm}; ///< ISO 216: A6

/// The card's two sides, each of the card's size, without cut marks. Large print that has no room
/// on them is set as large as fits.
struct GripCardSides {
    ink::Drawing front, back;
};
GripCardSides grip_card_sides(const Easel& easel, const GripCardInput& input);

/// Both sides in one drawing, cut marks round each. Printed at 100 % the handle's end and the check
/// ruler have their true size: 1 mm of the handle is `mm` points.
ink::Drawing grip_card(const Easel& easel, const GripCardInput& input);

inline constexpr double card_ruler = 50; ///< millimetres

} // namespace figure
