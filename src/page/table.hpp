// A plain table of words: columns by shares of the width, rows that a page break never cuts.
#pragma once

#include "figure/easel.hpp"
#include "page/block.hpp"

#include <string>
#include <vector>

namespace page {

struct TableColumn {
    std::string head;
    double share = 1; ///< of the width
};

struct TableCell {
    std::string text;
    theme::Text style = theme::Text::table;
    bool strong = false;
};

struct TableRow {
    std::vector<TableCell> cells; ///< as many as columns, or fewer; one alone goes over all of them
    std::string target;           ///< a place that the whole row links to: "#lesson-3"
    double least = 0;             ///< height at least, for a row to be filled in by hand
};

/// The head repeats on every page. No word is cut as long as the longest of all columns have room.
/// `width` 0 is the whole column.
Block table(const figure::Easel& easel, std::string name, const std::vector<TableColumn>& columns,
            const std::vector<TableRow>& rows, double space_before = 8, double width = 0);

/// A row to be written on, at least 8 mm high.
TableRow empty_row();

} // namespace page
