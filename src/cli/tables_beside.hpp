// Tables that lie beside a record and are not read, because nothing names them as they are called.
#pragma once

#include "cli/workshop.hpp"

namespace cli {

/// True of a table of one line: its header. An empty text has none.
bool is_header_only(std::string_view text);
/// True when the table is there and has more than its header: `begin` makes an empty one.
bool has_shots(const fs::path& table);

/// Warns of one when the lesson has no table: a spreadsheet, or a CSV file of another name than
/// `wanted` (empty: the record names none). True when something was told.
bool tell_table_beside(Read& read, const fs::path& record, const std::string& wanted);

/// What to do when the table `wanted` is not there but such a file is; empty when there is none.
std::string way_to_table(const fs::path& record, const std::string& wanted);

} // namespace cli
