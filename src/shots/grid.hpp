// Delimited text as rows of cells that know where they stand (RFC 4180, with the separator found).
#pragma once

#include "diag/finding.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace shots {

struct Cell {
    std::uint32_t offset = 0; ///< of the first byte, quote included
    std::uint32_t bytes = 0;
    bool quoted = false;
};

struct Row {
    std::size_t first = 0, count = 0; ///< into the cells
    std::uint32_t line = 0;
};

/// The cells of one table. Rows without any text are left out.
class Grid {
  public:
    /// Comma, semicolon or tab: the one that the first line has most of outside quotes. An open
    /// quote, or one that takes in further rows, is a finding and ends the reading.
    Grid(const diag::Source& source, diag::Findings& findings);

    const diag::Source& source() const { return *source_; }
    char separator() const { return separator_; }
    const std::vector<Row>& rows() const { return rows_; }
    std::span<const Cell> cells(const Row& row) const {
        return std::span(cells_).subspan(row.first, row.count);
    }
    /// The cell without its quotes and the spaces around; doubled quotes stay doubled.
    std::string_view raw(const Cell& cell) const;
    /// The cell as its author meant it.
    std::string text(const Cell& cell) const;
    diag::Span span(const Cell& cell) const;

  private:
    std::size_t read_cell(std::size_t at, diag::Findings& findings);
    void check_quoted(std::size_t open, std::size_t close, diag::Findings& findings);
    void read_row(std::size_t& at, std::uint32_t& line, diag::Findings& findings);

    const diag::Source* source_;
    char separator_ = ',';
    std::vector<Cell> cells_;
    std::vector<Row> rows_;
    bool broken_ = false;
};

/// `text` without the spaces (no-break ones too) around it.
std::string_view trimmed(std::string_view text);

} // namespace shots
