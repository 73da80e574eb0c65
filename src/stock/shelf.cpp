#include "stock/shelf.hpp"

#include <algorithm>
#include <fstream>
#include <iterator>
#include <set>

namespace stock {

namespace fs = std::filesystem;

std::optional<Shelf::Item> Shelf::find(std::string_view name) const {
    if (!folder_.empty()) {
        const fs::path path = folder_ / fs::path(name);
        if (std::ifstream in{path, std::ios::binary})
            return Item{path.string(), std::string(std::istreambuf_iterator<char>(in), {})};
    }
    const auto& all = built_in();
    const auto found = std::ranges::find(all, name, &BuiltIn::name);
    if (found == all.end()) return std::nullopt;
    return Item{"templates/" + std::string(name), std::string(found->text)};
}

std::vector<std::string> Shelf::names(std::string_view prefix) const {
    std::set<std::string> found;
    for (const auto& item : built_in())
        if (item.name.starts_with(prefix)) found.emplace(item.name);
    std::error_code gone;
    if (!folder_.empty())
        for (fs::recursive_directory_iterator it(folder_, gone), end; !gone && it != end;
             it.increment(gone)) {
            if (!it->is_regular_file(gone)) continue;
            auto name = fs::relative(it->path(), folder_, gone).generic_string();
            if (name.starts_with(prefix)) found.insert(std::move(name));
        }
    return {found.begin(), found.end()};
}

} // namespace stock
