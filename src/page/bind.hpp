// Books become parts of a larger one.
#pragma once

#include "page/book.hpp"

#include <string>

namespace page {

/// Appends a book. Its places and the links to them get the prefix, its bookmarks go one level
/// down, under `title` when there is one.
void bind(Book& book, Book part, const std::string& prefix, const std::string& title = {});

/// The page, from 1, on which that place stands; 0 when it stands nowhere.
std::size_t page_of(const Book& book, std::string_view place);

} // namespace page
