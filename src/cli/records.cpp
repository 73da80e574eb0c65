#include "cli/records.hpp"

#include <algorithm>
#include <set>

namespace cli {

namespace {

namespace fs = std::filesystem;

constexpr const char* record_name = "lesson.yaml";

std::string unreadable(const fs::path& folder, const std::error_code& why) {
    return "lessonleaf: the folder '" + folder.string() + "' cannot be read: " + why.message() +
           "\n";
}

/// Adds the records below `folder`; a part of it that cannot be read is a fault and is passed over.
void look_below(const fs::path& folder, Records& into) {
    std::error_code failed;
    std::vector<fs::path> deeper;
    fs::directory_iterator at(folder, failed);
    for (; !failed && at != fs::directory_iterator(); at.increment(failed)) {
        std::error_code gone;
        const auto status = at->symlink_status(gone);
        if (fs::is_directory(status))
            deeper.push_back(at->path());
        else if (at->path().filename() == record_name && at->is_regular_file(gone))
            into.paths.push_back(at->path().string());
    }
    if (failed) into.faults.push_back(unreadable(folder, failed));
    std::ranges::sort(deeper);
    for (const auto& below : deeper)
        look_below(below, into);
}

void add_folder(const std::string& argument, Records& into) {
    into.folders = true;
    const auto before = into.paths.size();
    const auto faults = into.faults.size();
    look_below(argument, into);
    if (into.paths.size() == before && into.faults.size() == faults)
        into.faults.push_back("lessonleaf: there is no lesson.yaml below '" + argument +
                              "'\n  hint: lessonleaf begin FOLDER starts a lesson\n");
}

/// The file itself, however it is spelt.
std::string identity(const std::string& path) {
    std::error_code failed;
    const auto whole = fs::canonical(path, failed);
    return failed ? path : whole.string();
}

} // namespace

Records records_of(const std::vector<std::string>& arguments) {
    Records out;
    for (const auto& argument : arguments) {
        std::error_code gone;
        if (fs::is_directory(argument, gone))
            add_folder(argument, out);
        else
            out.paths.push_back(argument);
    }
    std::set<std::string> seen;
    std::erase_if(out.paths, [&](const auto& path) { return !seen.insert(identity(path)).second; });
    return out;
}

} // namespace cli
