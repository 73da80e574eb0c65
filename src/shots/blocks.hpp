// Which block a shot belongs to: by a column's words or by the record's row numbers.
#pragma once

#include "record/lesson.hpp"
#include "shots/grid.hpp"
#include "shots/table.hpp"

namespace shots {

/// Sorts shots into blocks as the record declares; reports each unknown word once.
class Blocks {
  public:
    Blocks(const Grid& grid, const record::ShotSource& how, bool has_column,
           diag::Findings& findings);

    /// Sets the block of `shot`, the `place`-th of the table from 1; `cell` is its block cell, if
    /// any.
    void sort(Shot& shot, int place, const Cell* cell);
    /// Reports rows that no shot has.
    void finish(int shot_count) const;

  private:
    void by_rows(Shot& shot, int place);
    void by_word(Shot& shot, const Cell& cell);
    void unknown(const Cell& cell, const std::string& word);

    const Grid& grid_;
    const record::ShotSource& how_;
    bool has_column_;
    diag::Findings& findings_;
    std::vector<std::string> told_;
};

} // namespace shots
