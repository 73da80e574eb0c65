// A book as PDF: real text, embedded subsets, outline, links, structure, metadata.
#pragma once

#include "output/seal.hpp"
#include "page/book.hpp"

#include <string>
#include <vector>

namespace output {

/// A file that goes into the PDF beside its pages.
struct Attachment {
    std::string name; ///< without folders
    std::string type; ///< media type, such as "text/csv"
    std::string bytes;
};

struct PdfWishes {
    std::vector<Attachment> attachments;
    /// Opens the file; empty for none. With one the bytes differ from run to run: AES needs a key
    /// of its own each time.
    std::string password;
    std::string note; ///< for the program's own later use: kept in the file, shown nowhere
};

/// The same book and the same inputs give the same bytes. Every Words must have been shaped.
/// `inputs` stands for all that the book was made from; see seal.hpp. Throws CannotDraw.
std::string pdf(const page::Book& book, const Digest& inputs = {}, const PdfWishes& wishes = {});

/// The libraries that have a say in the bytes, with their versions.
std::string library_versions();

} // namespace output
