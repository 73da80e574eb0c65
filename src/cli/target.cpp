#include "cli/target.hpp"

#include "cli/records.hpp"
#include "output/file.hpp"
#include "output/print_of.hpp"
#include "report/exchange.hpp"

#include <algorithm>
#include <array>
#include <filesystem>
#include <iostream>

namespace cli {

namespace fs = std::filesystem;

namespace {

/// The same name with each of the right endings: "a.pdf or -o a.txt".
std::string instead(const Written& written, const std::string& target) {
    if (fs::path(target).filename().empty()) return std::string(written.usual);
    std::string out;
    for (const auto& ending : written.endings)
        out += (out.empty() ? "" : " or -o ") +
               fs::path(target).replace_extension(fs::path(ending)).string();
    return out;
}

} // namespace

bool is_folder(const std::string& target) {
    std::error_code gone;
    return target.ends_with('/') || fs::is_directory(target, gone);
}

std::optional<std::string> taken(const std::string& target, const std::string& pdf) {
    if (const auto note = report::read_note(output::note_in(pdf)); note && !note->whose.empty())
        return "'" + target + "' is the binder of '" + note->whose + "'";
    const auto producer = output::producer_of(pdf);
    if (!producer || producer == "Lessonleaf") return std::nullopt;
    return "'" + target + "' was made by another program (" + *producer + ")";
}

void tell_left_over(const std::vector<std::string>& files, const std::vector<std::string>& made) {
    for (const auto& path : files)
        if (std::ranges::find(made, path) == made.end())
            std::cerr << path
                      << ": note: this lies there from an earlier run and was not made now\n";
}

void make_folder(const std::string& folder) {
    std::error_code failed;
    fs::create_directories(folder, failed);
    const fs::path bare = folder.ends_with('/') ? fs::path(folder).parent_path() : fs::path(folder);
    if (std::error_code gone; fs::is_regular_file(bare, gone))
        throw output::CannotWrite("'" + bare.string() +
                                  "' is a file, and a folder is wanted\n  hint: -o FOLDER/, or "
                                  "move that file away");
    if (failed)
        throw output::CannotWrite("the folder '" + folder +
                                  "' cannot be made: " + failed.message());
}

std::string ending_of(const std::string& target) {
    return in_small_letters(std::filesystem::path(target).extension().string());
}

bool ends_as_input(const std::string& target) {
    constexpr std::array<std::string_view, 4> inputs{".yaml", ".yml", ".csv", ".tsv"};
    return std::ranges::find(inputs, ending_of(target)) != inputs.end();
}

bool rightly_named(const Written& written, const std::string& target) {
    if (target == "-") return true;
    if (is_folder(target)) {
        std::cerr << "lessonleaf: '" << target << "' is a folder, and " << written.what
                  << " is one file\n  hint: -o " << (fs::path(target) / written.usual).string()
                  << "\n";
        return false;
    }
    if (std::ranges::find(written.endings, ending_of(target)) != written.endings.end()) return true;
    std::cerr << "lessonleaf: " << written.what << " is written as " << written.as << ", not as '"
              << target << "'\n  hint: -o " << instead(written, target) << "\n";
    return false;
}

} // namespace cli
