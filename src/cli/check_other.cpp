#include "cli/check_other.hpp"

#include "cli/commands.hpp"
#include "cli/doubt_club.hpp"
#include "cli/exit.hpp"
#include "cli/pictures.hpp"
#include "cli/records.hpp"
#include "cli/term_register.hpp"
#include "people/start.hpp"
#include "theme/colour.hpp"

#include <iostream>

namespace cli {

namespace {

/// The pictures that it names are looked at, too.
void check_house(const Workshop& workshop, const diag::Source& source, diag::Findings& findings) {
    Read read;
    read.outside = workshop.outside();
    read.lesson.marks = people::read_house(source, findings).marks;
    theme::accent_of(read.lesson.marks.accent, findings);
    pictures_of(read);
    people::hand_on(read.findings.list(), findings);
}

void check_drills(const Workshop& workshop, const diag::Source& source, diag::Findings& findings) {
    const auto all =
        drills::merged(workshop.library("en"), drills::read_drills(source, findings), findings);
    drills::check_easier(all, findings);
}

void check_term(const Workshop& workshop, const diag::Source& source, diag::Findings& findings) {
    const record::Term term = record::read_term(source, findings);
    const fs::path file = source.name(), folder = lessons_folder(term, file);
    if (findings.clean()) check_folder_of(term, file, findings);
    if (!findings.clean()) return;
    std::vector<std::unique_ptr<Read>> reads;
    std::vector<const record::Lesson*> lessons;
    for (const auto& path : records_of({folder.string()}).paths) {
        reads.push_back(workshop.read_alone(path));
        if (reads.back()->readable) lessons.push_back(&reads.back()->lesson);
    }
    check_register(term, source, lessons, *workshop.academy(folder), findings);
}

} // namespace

bool is_term(const std::string& text) {
    return text.starts_with("term:") || text.find("\nterm:") != std::string::npos;
}

bool nearly_term(const std::string& text) {
    const auto has = [&](const std::string& key) {
        return text.starts_with(key) || text.find("\n" + key) != std::string::npos;
    };
    return !is_term(text) && !has("student:") && has("from:") && has("to:");
}

void check_entries(const Workshop& workshop, const people::People& people,
                   diag::Findings& findings) {
    for (const people::Person& person : people.list) {
        people::hand_on(person.findings, findings);
        doubt_lofts(workshop, person.bag, person.language.value_or("en-GB"), findings);
    }
}

std::optional<int> check_other(const Workshop& workshop, const std::string& path, bool strict) {
    const auto text = text_of(path);
    if (!text) return std::nullopt;
    const diag::Source source(path, *text);
    const std::string written = fs::path(path).filename().string();
    const std::string name = usual_name(written);
    diag::Findings found;
    if (name == "house.yaml")
        check_house(workshop, source, found);
    else if (name == "people.yaml")
        check_entries(workshop, people::read_people(source, found), found);
    else if (name == "drills.yaml")
        check_drills(workshop, source, found);
    else if (is_term(*text))
        check_term(workshop, source, found);
    else
        return std::nullopt;
    if (name != written && !is_term(*text))
        found.warning(source.whole(), "this file is not read for its name",
                      "call it " + name + ", in small letters");
    if (!tell(found, strict)) return findings;
    std::cout << path << (found.total() == 0 ? ": nothing wrong\n" : ": can be used\n");
    return all_written;
}

} // namespace cli
