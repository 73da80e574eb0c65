#include "cli/check_templates.hpp"

#include "cli/records.hpp"
#include "stock/shelf.hpp"

#include <algorithm>

namespace cli {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view what_is_read =
    "what is read there: style/pages.yaml, letters, papers, inks and marks; words/LANGUAGE/; "
    "drills/LANGUAGE/; clubs/typical.yaml; begin/";

/// Every file below words/LANGUAGE/ and drills/LANGUAGE/ is read, else those that are built in.
bool is_read(const std::string& name) {
    for (const std::string_view room : {"words/", "drills/"})
        if (name.starts_with(room) && name.find('/', room.size()) != std::string::npos) return true;
    return std::ranges::any_of(stock::built_in(),
                               [&](const auto& one) { return one.name == name; });
}

/// The template that is likely meant: the same but for capitals, in its folder, or nearly.
std::string meant(const std::string& name) {
    const std::string small = in_small_letters(name);
    std::vector<std::string_view> names;
    for (const auto& one : stock::built_in()) {
        if (one.name.starts_with("schema/")) continue;
        if (one.name == small || one.name.ends_with("/" + small)) return std::string(one.name);
        if (one.name.starts_with("style/")) names.push_back(one.name);
    }
    const bool text = small.ends_with(".yaml") || small.ends_with(".yml") ||
                      small.ends_with(".yaml.txt") || small.ends_with(".txt");
    if (!text) return {};
    if (small.starts_with("style/")) return std::string(diag::nearest(small, names));
    return small.find('/') == std::string::npos
               ? std::string(diag::nearest("style/" + small, names))
               : std::string();
}

} // namespace

void check_templates(const fs::path& folder, diag::Findings& findings) {
    std::error_code gone;
    if (!fs::is_directory(folder, gone))
        return findings.error({}, "there is no folder '" + folder.string() + "' of templates",
                              "give --templates a folder; " + std::string(what_is_read));
    std::vector<std::string> passed_over;
    std::size_t read = 0;
    for (fs::recursive_directory_iterator at(folder, gone), end; !gone && at != end;
         at.increment(gone)) {
        if (!at->is_regular_file(gone)) continue;
        std::string name = fs::relative(at->path(), folder, gone).generic_string();
        if (is_read(name))
            ++read;
        else
            passed_over.push_back(std::move(name));
    }
    std::ranges::sort(passed_over);
    std::size_t told = 0;
    for (const auto& name : passed_over)
        if (const std::string close = meant(name); !close.empty() && ++told) {
            const std::string what = "'" + (folder / name).string() + "' is not read";
            const std::string hint = "did you mean '" + (folder / close).string() + "'?";
            read == 0 ? findings.error({}, what, hint) : findings.warning({}, what, hint);
        }
    if (read == 0 && told == 0)
        findings.error({}, "nothing in the folder '" + folder.string() + "' is read as a template",
                       std::string(what_is_read));
}

} // namespace cli
