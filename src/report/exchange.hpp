// Which sheets of paper to exchange when a binder was made anew. Pure.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace report {

/// Pages of whole sheets of paper, from 1: odd to even.
struct PageRange {
    std::size_t first = 0, last = 0;
    friend bool operator==(const PageRange&, const PageRange&) = default;
};

struct Swap {
    std::optional<PageRange> out, in; ///< numbers of the earlier binder, and of this one
    std::size_t behind = 0;           ///< the page of this binder before `in`; 0 at the front
    friend bool operator==(const Swap&, const Swap&) = default;
};

/// Sheets that stay and get another number.
struct Renumbered {
    PageRange was, is;
    friend bool operator==(const Renumbered&, const Renumbered&) = default;
};

struct Exchange {
    std::vector<Swap> swaps;
    std::vector<Renumbered> renumbered;
    std::size_t sheets_in = 0; ///< sheets of paper to print
    friend bool operator==(const Exchange&, const Exchange&) = default;
};

/// Compares sheets of paper by their prints (one for each two pages): as many as possible stay.
Exchange exchange(const std::vector<std::string>& was, const std::vector<std::string>& is);

/// What a binder keeps about itself for the next time: the prints of its sheets and of those it
/// was compared with, and whose it is.
struct BinderNote {
    std::vector<std::string> now, before;
    std::string whose; ///< the student's code; empty in binders of older programs
};
std::string written(const BinderNote& note);
/// Nothing for a text that is no such note.
std::optional<BinderNote> read_note(const std::string& text);

} // namespace report
