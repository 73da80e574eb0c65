// The structure tree that Cairo 1.16 leaves unfinished. Internal to output.
#pragma once

#include "output/qpdf.hpp"
#include "page/book.hpp"

namespace output {

/// Gives figures their alternative text, head cells their scope, the whole a Document element, and
/// takes what stands for artifacts out of the tree and out of the pages.
void complete_tags(QPDF& file, const page::Book& book);

} // namespace output
