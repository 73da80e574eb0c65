// A leaf to cut up: the hold card, A6 on both sides, and the label for the binder's spine. Nothing
// else stands on it.
#pragma once

#include "figure/grip_card.hpp"
#include "page/block.hpp"
#include "page/course.hpp"

#include <vector>

namespace page {

/// Front and back of the leaf. The card's two sides lie over each other when the sheet is printed
/// on both sides along the long edge.
std::vector<Section> cut_out_pages(const figure::Easel& easel, const Course& course,
                                   const figure::GripCardInput& card);

} // namespace page
