// Blocks to pages. Four laws: a heading stays with what follows; a table head is never alone and
// repeats; a piece is cut only by the page's end when it is taller than a page; every page takes at
// least one piece, so that the flow ends.
#pragma once

#include "page/block.hpp"
#include "page/book.hpp"
#include "theme/theme.hpp"

#include <functional>

namespace page {

/// Draws what every page bears around its content, once the number of pages is known.
using Furniture = std::function<void(Sheet& sheet, std::size_t number, std::size_t count)>;

/// One place where the flow had to break a law.
struct Fault {
    std::size_t page = 0; ///< from 1
    std::string block;
    std::string what;
    std::string hint; ///< the way out, where there is a better one than fewer words
};

struct Flowed {
    Book book;
    std::vector<Fault> faults;
};

/// Places every section; an even number of sheets comes out. A sheet that is only there so that the
/// next one comes to stand on a right-hand page, or the number becomes even, bears `filler` (which
/// must fit one page), or furniture only.
Flowed flow(const std::vector<Section>& sections, const theme::Theme& theme,
            const Furniture& furniture, const Section* filler = nullptr);

} // namespace page
