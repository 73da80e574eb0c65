// The files of a term: one PDF a student, the printer's pile, and the lists about them.
#pragma once

#include "output/file.hpp"
#include "page/book.hpp"
#include "page/term_overview.hpp"
#include "record/term.hpp"

#include <string>
#include <vector>

namespace cli {

/// Whom a report goes to; empty where nobody knows.
struct Receiver {
    std::string first_name, address;
};

class TermFiles {
  public:
    /// `folder` exists. No file of `inputs` is ever written over.
    TermFiles(std::string folder, const record::Term& term, std::vector<std::string> inputs);

    /// Students in the order of the register. False, and nothing written, when another code has
    /// given its file that name ("A-1" and "A 1").
    bool student(const std::string& code, const Receiver& receiver, page::Book book);
    void overview(const page::Book& book);
    void group(const page::Book& book);
    /// Where each student's pages are in the printer's file, behind `before` pages.
    std::vector<page::PileRow> pile(std::size_t before) const;
    /// The proof sheet and then everybody.
    void printer(page::Book proof);
    /// What was printed (CSV), and to whom it goes (a line each to tick).
    void write_lists();

    const std::vector<std::string>& written() const { return written_; }

  private:
    struct Printed {
        std::string code, file, hash;
        Receiver receiver;
        page::Book book;
    };
    std::string write(const std::string& name, const std::string& bytes);

    std::string folder_, ending_;
    const record::Term& term_;
    std::vector<std::string> inputs_, written_;
    std::vector<Printed> printed_;
    std::vector<std::vector<std::string>> others_; ///< rows of the list
    std::size_t first_ = 0;                        ///< pages before the first student
};

/// "m…@g….example": enough to see a mix-up, not enough to write to.
std::string masked(const std::string& address);

/// Letters and digits of a name, everything else a hyphen, so that no name leaves a folder.
std::string file_stem(const std::string& name);

} // namespace cli
