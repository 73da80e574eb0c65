#include "cli/records.hpp"

#include <algorithm>
#include <iostream>
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
    std::vector<std::string> strays;
    bool has_record = false;
    fs::directory_iterator at(folder, failed);
    for (; !failed && at != fs::directory_iterator(); at.increment(failed)) {
        std::error_code gone;
        const auto status = at->symlink_status(gone);
        if (fs::is_directory(status))
            deeper.push_back(at->path());
        else if (at->path().filename() == record_name && at->is_regular_file(gone)) {
            into.paths.push_back(at->path().string());
            has_record = true;
        } else if (nearly_record_name(at->path().filename().string()))
            strays.push_back(at->path().string());
    }
    std::ranges::sort(strays);
    for (const auto& path : strays)
        if (!has_record) into.notes.push_back(stray(path));
    if (failed) into.faults.push_back(unreadable(folder, failed));
    into.whole = into.whole && !failed;
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

bool nearly_record_name(const std::string& name) {
    const std::string small = in_small_letters(name);
    return name != record_name &&
           (small == "lesson.yaml" || small == "lesson.yml" || small == "lesson.yaml.txt" ||
            small == "lesson.yml.txt" || small == "lesson.yaml.yaml" || small == "lesson.txt");
}

bool folder_named(const std::string& command, const std::string& target) {
    std::error_code gone;
    if (target.ends_with('/') || fs::is_directory(target, gone)) return true;
    const std::string ending = in_small_letters(fs::path(target).extension().string());
    const bool file = ending == ".pdf" || ending == ".txt" || ending == ".eml" || ending == ".ics";
    if (!file && target != "-") return true;
    const std::string one = command == "mail" ? "draft" : "sheet";
    std::cerr << "lessonleaf " << command << ": "
              << (file ? "'" + target + "' is one file" : "standard output holds one " + one)
              << ", and here may be many\n  hint: -o FOLDER/"
              << (command == "term" ? "" : ", or name the one record, such as FOLDER/lesson.yaml")
              << "\n";
    return false;
}

std::string in_small_letters(std::string text) {
    std::ranges::transform(text, text.begin(), [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    });
    return text;
}

std::string stray(const std::string& path) {
    return path + ": note: this lesson is left out, for it is not called lesson.yaml\n"
                  "  hint: give it a folder of its own and call it lesson.yaml there\n";
}

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
