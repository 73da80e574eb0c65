#include "cli/lessons_below.hpp"

#include "cli/records.hpp"

#include <algorithm>
#include <iostream>

namespace cli {

namespace {

/// True when a line begins with `key` and a colon.
bool has_key(std::string_view text, std::string_view key) {
    for (std::size_t at = text.find(key); at != std::string_view::npos;
         at = text.find(key, at + 1)) {
        const std::size_t end = text.find_first_not_of(' ', at + key.size());
        if ((at == 0 || text[at - 1] == '\n') && end != std::string_view::npos && text[end] == ':')
            return true;
    }
    return false;
}

bool reads_like_a_lesson(std::string_view text) {
    if (text.starts_with("\xEF\xBB\xBF")) text.remove_prefix(3);
    return has_key(text, "student") && (has_key(text, "saw") || has_key(text, "changed"));
}

} // namespace

Below lessons_below(const Workshop& workshop, const fs::path& folder) {
    return lessons_below(workshop, std::vector{folder.string()});
}

Below lessons_below(const Workshop& workshop, const std::vector<std::string>& folders) {
    const Records records = records_of(folders);
    for (const auto& line : records.notes)
        std::cerr << line;
    if (!records.whole)
        for (const auto& line : records.faults)
            std::cerr << line;
    Below below{{}, records.whole};
    for (const std::string& record : records.paths)
        below.lessons.push_back(workshop.read(record));
    std::ranges::stable_sort(below.lessons, {},
                             [](const auto& read) { return read->lesson.date.value; });
    return below;
}

Lessons lessons_of(const Below& below, std::string_view code) {
    Lessons out;
    for (const auto& read : below.lessons)
        if (read->readable && read->lesson.student.code == code) out.push_back(read.get());
    return out;
}

std::vector<fs::path> files_below(const fs::path& folder,
                                  std::initializer_list<std::string_view> endings) {
    std::vector<fs::path> out;
    std::error_code gone;
    const auto options = fs::directory_options::skip_permission_denied;
    for (fs::recursive_directory_iterator at(folder, options, gone), end; !gone && at != end;
         at.increment(gone)) {
        const std::string ending = in_small_letters(at->path().extension().string());
        std::error_code dangling; // a link that leads nowhere ends no walk
        if (std::ranges::find(endings, ending) != endings.end() && at->is_regular_file(dangling))
            out.push_back(at->path());
    }
    std::ranges::sort(out);
    return out;
}

std::vector<fs::path> strays_below(const fs::path& folder) {
    auto strays = files_below(folder, {".yaml", ".yml", ".txt"});
    std::erase_if(strays, [](const fs::path& path) {
        return path.filename() == "lesson.yaml" || !reads_like_a_lesson(text_of(path).value_or(""));
    });
    return strays;
}

} // namespace cli
