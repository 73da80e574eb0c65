// Every message about house.yaml, people.yaml and a record under them, stored whole beside the
// input that causes it. LESSONLEAF_ACCEPT=1 writes the expectations anew.
#include "people/start.hpp"
#include "record/read_lesson.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iterator>

namespace {

namespace fs = std::filesystem;
const fs::path folder = fs::path(TESTS_DIR) / "messages";

std::string text_of(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

using Read = std::function<void(const diag::Source&, diag::Findings&)>;

void read_house(const diag::Source& source, diag::Findings& findings) {
    people::read_house(source, findings);
}

void read_people(const diag::Source& source, diag::Findings& findings) {
    for (const auto& person : people::read_people(source, findings).list)
        people::hand_on(person.findings, findings);
}

/// A record below around/house.yaml and around/people.yaml.
void read_known(const diag::Source& source, diag::Findings& findings) {
    static const diag::Source house_source("house.yaml",
                                           text_of(folder / "known/around/house.yaml"));
    static const diag::Source people_source("people.yaml",
                                            text_of(folder / "known/around/people.yaml"));
    const auto house = people::read_house(house_source, findings);
    const auto people = people::read_people(people_source, findings);
    REQUIRE(findings.total() == 0);
    record::read_lesson(source, findings, [&](const auto& code, bool bare) {
        return people::start_of(&house, &people, code, bare, findings);
    });
}

void check(const char* kind, std::size_t least, const Read& read) {
    std::vector<fs::path> files;
    for (const auto& entry : fs::directory_iterator(folder / kind))
        if (entry.path().extension() == ".yaml") files.push_back(entry.path());
    std::ranges::sort(files);
    CHECK(files.size() >= least);
    for (const fs::path& file : files) {
        const diag::Source source(file.filename().string(), text_of(file));
        diag::Findings findings;
        read(source, findings);
        const std::string messages = diag::print_all(findings);
        const fs::path expected = fs::path(file).replace_extension(".expected");
        if (std::getenv("LESSONLEAF_ACCEPT")) std::ofstream(expected, std::ios::binary) << messages;
        INFO(file.filename().string());
        CHECK(messages == text_of(expected));
        CHECK_FALSE(messages.empty());
        for (const diag::Finding& finding : findings.list())
            CHECK_FALSE(finding.hint.empty());
    }
}

} // namespace

TEST_CASE("every message about a house is the stored one") { check("house", 8, read_house); }
TEST_CASE("every message about people is the stored one") { check("people", 15, read_people); }
TEST_CASE("every message about a record and its student is the stored one") {
    check("known", 9, read_known);
}
