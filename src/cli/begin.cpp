#include "cli/begin_record.hpp"
#include "cli/check_templates.hpp"
#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/lessons_below.hpp"
#include "output/file.hpp"
#include "record/read_date.hpp"
#include "yaml/field.hpp"

#include <algorithm>
#include <chrono>
#include <iostream>

namespace cli {

namespace {

struct Wishes {
    std::string folder, code, date;
};

void make_folder(const fs::path& folder) {
    std::error_code failed;
    fs::create_directories(folder, failed);
    if (failed)
        throw output::CannotWrite("the folder '" + folder.string() +
                                  "' cannot be made: " + failed.message());
}

/// Writes files that are not there yet; one that is there stops all of them.
int write_new(const fs::path& folder,
              const std::vector<std::pair<std::string, std::string>>& files) {
    std::error_code gone;
    for (const auto& [name, text] : files)
        if (fs::exists(folder / name, gone)) {
            std::cerr << "lessonleaf: '" << (folder / name).string()
                      << "' is there already and stays as it is\n"
                      << "  hint: name a new folder, or another --date, for a new lesson\n";
            return findings;
        }
    make_folder(folder);
    for (const auto& [name, text] : files) {
        output::write_file((folder / name).string(), text);
        std::cout << (folder / name).string() << "\n";
    }
    return all_written;
}

/// Puts `text` where the template says `hole`.
void fill(std::string& in, std::string_view hole, const std::string& text) {
    if (const auto at = in.find(hole); at != std::string::npos) in.replace(at, hole.size(), text);
}

/// A record to fill in from nothing.
int begin_alone(const Wishes& wishes, const record::Date& date, const Common& common) {
    diag::Findings found;
    if (!common.templates.empty()) check_templates(common.templates, found);
    if (!tell(found, common.strict)) return findings;
    const stock::Shelf shelf =
        common.templates.empty() ? stock::Shelf() : stock::Shelf(common.templates);
    std::vector<std::pair<std::string, std::string>> files;
    for (const char* name : {"lesson.yaml", "shots.csv"}) {
        const auto item = shelf.find(std::string("begin/") + name);
        if (!item)
            throw output::CannotWrite(std::string("the template begin/") + name + " is missing");
        std::string text(item->text);
        fill(text, "{date}", record::iso(date));
        fill(text, "{next}",
             record::iso(record::Date{std::chrono::sys_days(date) + std::chrono::days(14)}));
        files.emplace_back(name, std::move(text));
    }
    return write_new(wishes.folder, files);
}

/// The day of the machine: it only names the folder, and can be changed there.
record::Date today() {
    const std::time_t now = std::chrono::system_clock::to_time_t(std::chrono::system_clock::now());
    std::tm local{};
    localtime_r(&now, &local);
    return record::Date{std::chrono::year(local.tm_year + 1900),
                        std::chrono::month(static_cast<unsigned>(local.tm_mon + 1)),
                        std::chrono::day(static_cast<unsigned>(local.tm_mday))};
}

/// Beside the student's other lessons; else a folder called after the code.
fs::path folder_of(const Wishes& wishes, const Read* last, const record::Date& date) {
    if (last) {
        const fs::path folder = fs::path(last->sources.front().name()).parent_path();
        if (record::date_of(folder.filename().string()))
            return folder.parent_path() / record::iso(date);
    }
    return fs::path(wishes.folder) / wishes.code / record::iso(date);
}

bool is_plain(const std::string& code) {
    return !code.empty() && code.front() != '-' && code.find_first_of("/\\.") == std::string::npos;
}

/// The code of whoever bears that name, in people.yaml or in a lesson; empty when that is nobody or
/// more than one.
std::string code_of(const Academy& academy, const Below& below, const std::string& name) {
    std::vector<std::string> codes;
    const std::string word = yaml::plain_word(name);
    const auto add = [&](const std::string& called, const std::string& code) {
        const std::string plain = yaml::plain_word(called);
        const bool same = plain == word || plain.starts_with(word + " ");
        if (same && !code.empty() && std::ranges::find(codes, code) == codes.end())
            codes.push_back(code);
    };
    if (academy.people)
        for (const people::Person& person : academy.people->list)
            add(person.full_name(), person.code.value);
    for (const auto& read : below.lessons)
        add(read->lesson.student.name, read->lesson.student.code);
    return codes.size() == 1 ? codes.front() : std::string();
}

/// Says why there is nobody of that code, when that is so.
bool knows(const Academy& academy, const Below& below, const std::string& code) {
    const bool taught = !lessons_of(below, code).empty();
    if (academy.person(code) || (taught && !academy.people)) return true;
    if (const std::string own = code_of(academy, below, code); !own.empty()) {
        std::cerr << "lessonleaf: '" << code << "' is a name, and a code is wanted\n  hint: write "
                  << "--student " << own << "\n";
        return false;
    }
    std::cerr << "lessonleaf: "
              << (academy.people ? "people.yaml knows no '"
                                 : "no people.yaml and no lesson knows '")
              << code << "'\n  hint: ";
    const auto near = academy.people ? academy.people->nearest_code(code) : std::string_view();
    std::cerr << (near.empty() ? "add the student to people.yaml in the academy's folder: "
                                 "- {code: " +
                                     code + ", first name: ..., hand: right}, or hand: left"
                               : "did you mean '" + std::string(near) + "'?")
              << "\n";
    return false;
}

int begin_for(const Wishes& wishes, const record::Date& date, const Common& common) {
    const Workshop workshop(common);
    if (!tell(workshop.findings(), common.strict)) return findings;
    const auto academy = workshop.academy(wishes.folder);
    if (!tell(academy->findings, common.strict)) return findings;
    const Below below = lessons_below(workshop, wishes.folder);
    auto lessons = lessons_of(below, wishes.code);
    if (!knows(*academy, below, wishes.code)) return findings;
    std::erase_if(lessons, [&](const auto& read) { return !(read->lesson.date.value < date); });
    const Read* last = lessons.empty() ? nullptr : lessons.back();
    const Begun begun{academy->house ? &*academy->house : nullptr,
                      academy->person(wishes.code),
                      last,
                      wishes.code,
                      date,
                      lessons.size(),
                      folder_of(wishes, last, date)};
    return write_new(begun.folder,
                     {{"lesson.yaml", record_for(begun)}, {table_name(begun), table_for(begun)}});
}

int run(const Wishes& wishes, const Common& common) {
    const auto date = wishes.date.empty() ? std::optional(today()) : record::date_of(wishes.date);
    if (!date || (!wishes.code.empty() && !is_plain(wishes.code))) {
        std::cerr << "lessonleaf begin: "
                  << (date ? "'" + wishes.code + "' is no code"
                           : "'" + wishes.date + "' is no date")
                  << "\n  hint: for example --student RU-04 --date 2026-05-14\n";
        return wrong_use;
    }
    return wishes.code.empty() ? begin_alone(wishes, *date, common)
                               : begin_for(wishes, *date, common);
}

} // namespace

Run set_up_begin(CLI::App& app, const Common& common) {
    auto wishes = std::make_shared<Wishes>();
    app.add_option("FOLDER", wishes->folder,
                   "Folder of the new lesson, made when it is not there; with --student, of the "
                   "academy")
        ->required();
    app.add_option(
        "--student", wishes->code,
        "Code of the student: the last lesson's aim, plan, drills and targets come along");
    app.add_option("--date", wishes->date,
                   "Day of the lesson, year-month-day; the machine's when left out");
    return [wishes, &common] { return run(*wishes, common); };
}

} // namespace cli
