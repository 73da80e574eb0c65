// One student's lessons to one binder.
#pragma once

#include "cli/gather.hpp"
#include "report/exchange.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cli {

struct Bound {
    page::Book book;
    std::string note;              ///< for the next time
    std::vector<std::string> news; ///< what to exchange, in sentences
};

/// The note of a binder that was written before; nothing when the bytes are none of ours.
std::optional<report::BinderNote> binder_note(const std::string& pdf);

/// A code as it stands in a note, on one line.
std::string owner_of(std::string code);

/// What the note tells to exchange, in the words of that lesson's sheet.
std::vector<std::string> news_of(const Workshop& workshop, const report::BinderNote& note,
                                 const record::Lesson& latest);

/// Lays out everything, compares with the earlier binder, numbers the pages. `lessons` are sound,
/// by date, one at least; faults of the layout become warnings.
Bound bind_lessons(const std::vector<Gathered>& lessons, const std::string& code,
                   const std::optional<report::BinderNote>& was, diag::Findings& found);

} // namespace cli
