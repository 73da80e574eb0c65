#include "page/bind.hpp"

namespace page {

void bind(Book& book, Book part, const std::string& prefix, const std::string& title) {
    const std::size_t first = book.sheets.size();
    if (!title.empty()) book.bookmarks.push_back({title, 1, first, {}});
    for (auto& mark : part.bookmarks) {
        mark.sheet += first;
        if (!title.empty()) ++mark.level;
        book.bookmarks.push_back(std::move(mark));
    }
    for (auto& sheet : part.sheets) {
        for (auto& mark : sheet.marks) {
            if (auto* place = std::get_if<ink::Place>(&mark)) place->name = prefix + place->name;
            if (auto* link = std::get_if<ink::Link>(&mark); link && link->target.starts_with('#'))
                link->target.insert(1, prefix);
        }
        book.sheets.push_back(std::move(sheet));
    }
}

std::size_t page_of(const Book& book, std::string_view name) {
    for (std::size_t i = 0; i < book.sheets.size(); ++i)
        for (const auto& mark : book.sheets[i].marks)
            if (const auto* place = std::get_if<ink::Place>(&mark); place && place->name == name)
                return i + 1;
    return 0;
}

} // namespace page
