// Pages of short notes in columns, with ruled lines to write on under them.
#pragma once

#include "figure/easel.hpp"
#include "page/block.hpp"

#include <string>
#include <vector>

namespace page {

/// A paragraph of a group, its bold first words apart.
struct Note {
    std::string head, text;
    theme::Text style = theme::Text::body;
};

struct NoteGroup {
    std::string title;
    std::vector<Note> notes;
    bool boxed = false;
};

/// A group as one drawing; empty when it has no notes.
ink::Drawing note_group(const figure::Easel& easel, const NoteGroup& group, double width);

/// Lines to write on, 9 mm apart, filling that height; their title first.
ink::Drawing lines_to_write_on(const figure::Easel& easel, std::string_view title, double width,
                               double height);

/// Lets lines to write on stand below the last block of a section that leaves room for them.
void offer_lines(const figure::Easel& easel, Section& section, std::string title);

/// Lines to write on, `foot` points short of the foot of a side that would else be left empty.
void fill_with_lines(const figure::Easel& easel, std::vector<Block>& blocks, std::string_view title,
                     double foot);

/// Blocks for a page: `over` across the page, two columns, lines below down to the foot. What is
/// too full is set tighter step by step: the columns are cut where they are most even, then the
/// lines go, and at last everything stands in one column over as many pages as it needs.
std::vector<Block> page_of_notes(const figure::Easel& easel, std::string_view title,
                                 const std::vector<NoteGroup>& over,
                                 const std::vector<NoteGroup>& left,
                                 const std::vector<NoteGroup>& right, std::string_view lines_title);

} // namespace page
