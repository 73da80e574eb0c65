// What stands on a page: blocks of pieces, measured once, placed by `flow`.
#pragma once

#include "ink/mark.hpp"

#include <functional>
#include <string>
#include <vector>

namespace page {

/// The smallest thing that a page break never cuts: a line of a paragraph, a table row, a figure.
struct Piece {
    ink::Drawing drawing;    ///< its size is the room it takes
    bool keeps_next = false; ///< no page break between this piece and the next one of the block
};

/// Pieces that belong together.
struct Block {
    std::string name; ///< what a finding calls it
    std::string role; ///< structure type around its pieces; empty when the pieces bring their own
    double space_before = 0; ///< points, dropped at the top of a page
    std::vector<Piece> pieces;
    ink::Drawing head; ///< repeated on top of every page the block goes on to (table heads)
    bool keep_with_next = false; ///< never the last block of a page
    bool at_foot = false;        ///< this block and those behind it stand at the foot of the page

    double height() const;
};

/// Height of blocks under each other at the top of a page.
double total_height(const std::vector<Block>& blocks);

/// Pages that answer one question.
struct Section {
    std::string name;        ///< a link target, "drill-1"
    std::string title;       ///< bookmark, and head of its first page
    bool right_hand = false; ///< starts on a right-hand page
    bool fresh_page = true;  ///< starts on a new page
    std::vector<Block> blocks;
    /// What stands below the last block where that leaves at least `least_rest` points: made for
    /// the height that is free.
    std::function<ink::Drawing(double)> rest = {};
    double least_rest = 0;
};

} // namespace page
