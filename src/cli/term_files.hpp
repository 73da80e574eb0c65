// The files of a term: one PDF a student, the printer's pile, and the lists about them.
#pragma once

#include "output/seal.hpp"
#include "page/book.hpp"
#include "page/term_overview.hpp"
#include "record/term.hpp"

#include <optional>
#include <string>
#include <vector>

namespace cli {

/// Whom a report goes to; empty where nobody knows.
struct Receiver {
    std::string first_name, address;
};

/// Where the papers of one term go.
struct TermPlace {
    std::string folder;              ///< that exists when something is written
    std::string term;                ///< its name
    std::vector<std::string> codes;  ///< who may get a report, in the order of the register
    bool group_page = false;         ///< there will be one when everybody's report is printed
    std::vector<std::string> inputs; ///< never written over
    bool all = false;                ///< what lies there as it would be is written, too
};

/// Files that lie there with the same bytes are left alone.
class TermFiles {
  public:
    explicit TermFiles(TermPlace place);

    /// The earlier of two codes whose reports would bear one name ("A-1" and "A 1").
    std::optional<std::string> name_taken_by(std::size_t at) const;

    /// Every file lies there as it was left by a run from `inputs` in which nothing was wrong.
    bool are_up_to_date(const output::Digest& inputs) const;
    /// The paths of all of them, in the order of making.
    std::vector<std::string> paths() const;

    /// The report of the student at that place of `codes`; false when it lay there already. May be
    /// called from several threads for different students.
    bool student(std::size_t at, const Receiver& receiver, page::Book book);
    std::string path_of(std::size_t at) const { return path(slots_[at].file); }
    void overview(const page::Book& book);
    void group(const page::Book& book);
    /// Where each student's pages are in the printer's file, behind `before` pages.
    std::vector<page::PileRow> pile(std::size_t before) const;
    /// The proof sheet and then everybody. Bears the seal of `inputs`, when nothing was wrong.
    void printer(page::Book proof, const output::Digest& inputs);
    /// What was printed (CSV), and to whom it goes (a line each to tick).
    void write_lists();
    /// The paths of what is no student's.
    const std::vector<std::string>& others() const { return others_; }
    /// The paths of all that was written or left alone.
    std::vector<std::string> made() const;
    /// Papers that lie there: of the group, and of these codes.
    std::vector<std::string> papers_of(const std::vector<std::string>& codes) const;

  private:
    struct Slot {
        std::string code, file, hash; ///< no hash: not printed
        Receiver receiver;
        page::Book book;
    };
    std::string path(const std::string& name) const;
    /// False when the same bytes lay there.
    bool write(const std::string& name, const std::string& bytes) const;
    void write_other(const std::string& name, const std::string& bytes);
    void write_other(const std::string& name, const page::Book& book, const std::string& first,
                     const output::Digest& inputs);

    TermPlace place_;
    std::string ending_;
    std::vector<Slot> slots_;
    std::vector<std::string> others_;
    std::vector<std::vector<std::string>> rows_; ///< of the list, of what is no student's
    std::size_t first_ = 0;                      ///< pages before the first student
};

/// "m…@g….example": enough to see a mix-up, not enough to write to.
std::string masked(const std::string& address);

} // namespace cli
