#include "cli/tables_beside.hpp"

#include "cli/plain_letters.hpp"
#include "cli/records.hpp"

#include <algorithm>
#include <array>

namespace cli {

namespace {

/// "shots" of "Shots.csv.csv".
std::string first_part(const std::string& name) {
    return in_small_letters(plain_letters(name.substr(0, name.find('.'))));
}

bool is_sheet(const std::string& small) {
    constexpr std::array<std::string_view, 4> endings{".xlsx", ".xls", ".ods", ".numbers"};
    return std::ranges::any_of(endings, [&](auto ending) { return small.ends_with(ending); });
}

bool is_csv(const std::string& small) {
    constexpr std::array<std::string_view, 4> endings{".csv", ".csv.txt", ".tsv", ".txt"};
    return std::ranges::any_of(endings, [&](auto ending) { return small.ends_with(ending); });
}

/// The likeliest of the files beside the record: one called like the table that is wanted, else,
/// when the record has its folder to itself, any table.
std::string found_beside(const fs::path& record, const std::string& wanted) {
    const std::string like = wanted.empty() ? "shots" : first_part(wanted);
    const bool alone = record.filename() == "lesson.yaml";
    std::vector<std::string> named, others;
    std::error_code gone;
    const fs::path folder = record.parent_path().empty() ? "." : record.parent_path();
    for (fs::directory_iterator at(folder, gone), end; !gone && at != end; at.increment(gone)) {
        const std::string name = at->path().filename().string(), small = in_small_letters(name);
        if (name == wanted || name.starts_with('.') || name.starts_with('~')) continue;
        if (!is_sheet(small) && !is_csv(small)) continue;
        if (wanted.empty() && is_csv(small) && !has_shots(at->path())) continue;
        if (first_part(name) == like)
            named.push_back(name);
        else if (alone && !small.ends_with(".txt"))
            others.push_back(name);
    }
    auto& best = named.empty() ? others : named;
    std::ranges::sort(best);
    return best.empty() ? std::string() : best.front();
}

std::string way_of(const std::string& found, const std::string& wanted) {
    const std::string name = wanted.empty() ? "shots.csv" : wanted;
    if (is_sheet(in_small_letters(found)))
        return "save it in your spreadsheet as CSV under the name " + name +
               (wanted.empty() ? ", and add 'shots: " + name + "' to the record" : "");
    if (plain_letters(found) == plain_letters(wanted))
        return "its letters are stored in another way: type the name anew in one of the two "
               "places, or use plain letters, " +
               plain_letters(wanted);
    if (!wanted.empty())
        return "call it " + name + ", letter by letter, or add 'shots: " + found +
               "' to the record";
    return "add 'shots: " + found + "' to the record";
}

} // namespace

bool is_header_only(std::string_view text) {
    text = text.substr(0, text.find_last_not_of(" \r\n\t") + 1);
    return !text.empty() && text.find_first_of("\r\n") == std::string_view::npos;
}

bool has_shots(const fs::path& table) {
    const std::string text = text_of(table).value_or("");
    return text.find_first_not_of(" \r\n\t") != std::string::npos && !is_header_only(text);
}

bool tell_table_beside(Read& read, const fs::path& record, const std::string& wanted) {
    const std::string found = found_beside(record, wanted);
    if (found.empty()) return false;
    read.findings.warning(read.sources.front().whole(),
                          diag::quote(found) + " beside the record is not read, so the sheet "
                                               "has no shots",
                          way_of(found, wanted) + "; 'shots: none' says that none were measured");
    return true;
}

std::string way_to_table(const fs::path& record, const std::string& wanted) {
    const std::string found = found_beside(record, wanted);
    if (found.empty()) return {};
    const bool same = plain_letters(found) == plain_letters(wanted);
    return diag::quote(found) + " lies there" + (same ? ", " : ": ") + way_of(found, wanted);
}

} // namespace cli
