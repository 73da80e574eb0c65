// A book as PDF: real text, embedded subsets, outline, links, structure, metadata.
#pragma once

#include "output/seal.hpp"
#include "page/book.hpp"

#include <string>

namespace output {

/// The same book and the same inputs give the same bytes. Every Words must have been shaped.
/// `inputs` stands for all that the book was made from; see seal.hpp. Throws CannotDraw.
std::string pdf(const page::Book& book, const Digest& inputs = {});

/// The libraries that have a say in the bytes, with their versions.
std::string library_versions();

} // namespace output
