// The finished document: sheets with everything in its place. Output adds nothing to it.
#pragma once

#include "ink/mark.hpp"

#include <string>
#include <vector>

namespace page {

/// One side of paper. `label` is what the page calls itself ("3"), `name` what it is ("hold").
struct Sheet {
    ink::Size size;
    std::vector<ink::Mark> marks;
    std::string label;
    std::string name;
};

/// A line of the reader's outline. Levels start at 1; `sheet` counts from 0.
struct Bookmark {
    std::string title;
    int level = 1;
    std::size_t sheet = 0;
    ink::Point at;
};

struct Book {
    std::vector<Sheet> sheets;
    std::vector<Bookmark> bookmarks;
    std::string title, author, subject;
    std::string language; ///< BCP 47, such as "en-GB"
    std::string created;  ///< ISO 8601 date of the lesson, such as "2026-05-14"
};

} // namespace page
