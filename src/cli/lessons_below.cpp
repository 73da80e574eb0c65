#include "cli/lessons_below.hpp"

#include "cli/records.hpp"

#include <algorithm>

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

std::vector<std::unique_ptr<Read>> lessons_of(const Workshop& workshop, const fs::path& folder,
                                              std::string_view code) {
    std::vector<std::unique_ptr<Read>> lessons;
    for (const std::string& record : records_of({folder.string()}).paths) {
        auto read = workshop.read(record);
        if (read->readable && read->lesson.student.code == code) lessons.push_back(std::move(read));
    }
    std::ranges::stable_sort(lessons, {}, [](const auto& read) { return read->lesson.date.value; });
    return lessons;
}

std::vector<fs::path> strays_below(const fs::path& folder) {
    std::vector<fs::path> strays;
    std::error_code gone;
    const auto options = fs::directory_options::skip_permission_denied;
    for (fs::recursive_directory_iterator at(folder, options, gone), end; !gone && at != end;
         at.increment(gone)) {
        const fs::path& path = at->path();
        const std::string ending = in_small_letters(path.extension().string());
        if (ending != ".yaml" && ending != ".yml" && ending != ".txt") continue;
        if (path.filename() == "lesson.yaml" || !at->is_regular_file(gone)) continue;
        if (reads_like_a_lesson(text_of(path).value_or(""))) strays.push_back(path);
    }
    std::ranges::sort(strays);
    return strays;
}

} // namespace cli
