#include "cli/check_other.hpp"

#include "cli/commands.hpp"
#include "cli/exit.hpp"
#include "cli/gather.hpp"
#include "drills/drill.hpp"
#include "people/house.hpp"
#include "people/people.hpp"
#include "record/term.hpp"

#include <iostream>

namespace cli {

namespace {

/// A line that begins with the key 'term', which no lesson record has.
bool is_term(const std::string& text) {
    return text.starts_with("term:") || text.find("\nterm:") != std::string::npos;
}

} // namespace

std::optional<int> check_other(const std::string& path, bool strict) {
    const auto text = text_of(path);
    if (!text) return std::nullopt;
    const diag::Source source(path, *text);
    const std::string name = fs::path(path).filename().string();
    diag::Findings found;
    if (name == "house.yaml")
        people::read_house(source, found);
    else if (name == "people.yaml")
        people::read_people(source, found);
    else if (name == "drills.yaml")
        drills::read_drills(source, found);
    else if (is_term(*text))
        record::read_term(source, found);
    else
        return std::nullopt;
    if (!tell(found, strict)) return findings;
    std::cout << path << ": nothing wrong\n";
    return all_written;
}

} // namespace cli
