// Every message of the readers, stored whole beside the input that causes it.
// LESSONLEAF_ACCEPT=1 writes the expectations anew: read each of them before committing.
#include "record/read_lesson.hpp"
#include "shots/read_table.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <memory>

namespace {

namespace fs = std::filesystem;
const fs::path folder = fs::path(TESTS_DIR) / "messages";

std::string text_of(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

/// What a coach sees of one record and its table.
std::string messages_of(const fs::path& file) {
    const diag::Source source(file.filename().string(), text_of(file));
    diag::Findings findings;
    const record::Lesson lesson = record::read_lesson(source, findings);
    if (findings.clean()) record::check_lesson(lesson, findings);
    const fs::path table_file = fs::path(file).replace_extension(".csv");
    const diag::Source table_source(table_file.filename().string(), text_of(table_file));
    if (lesson.shots && fs::exists(table_file)) {
        shots::Table table =
            shots::read_table(table_source, *lesson.shots, lesson.student.hand.value, findings);
        if (findings.clean()) {
            shots::set_aside(table, lesson.shots->rules, findings);
            shots::check_plausible(table, table_source, findings, lesson.club.name);
            if (lesson.aim) shots::check_aim(table, *lesson.aim, findings);
        }
    }
    return diag::print_all(findings);
}

std::vector<fs::path> files_with(const std::string& ending) {
    std::vector<fs::path> files;
    for (const auto& entry : fs::directory_iterator(folder))
        if (entry.path().extension() == ending) files.push_back(entry.path());
    std::ranges::sort(files);
    return files;
}

} // namespace

TEST_CASE("every message is the one that is stored beside its input") {
    const bool accept = std::getenv("LESSONLEAF_ACCEPT") != nullptr;
    for (const fs::path& file : files_with(".yaml")) {
        const fs::path expected = fs::path(file).replace_extension(".expected");
        const std::string messages = messages_of(file);
        if (accept) std::ofstream(expected, std::ios::binary) << messages;
        INFO(file.filename().string());
        CHECK(messages == text_of(expected));
        CHECK_FALSE(messages.empty());
    }
}

TEST_CASE("every input has its expectation, every expectation and every table its record") {
    CHECK(files_with(".yaml").size() >= 45);
    for (const fs::path& file : files_with(".yaml"))
        CHECK(fs::exists(fs::path(file).replace_extension(".expected")));
    for (const std::string ending : {".expected", ".csv"})
        for (const fs::path& file : files_with(ending))
            CHECK(fs::exists(fs::path(file).replace_extension(".yaml")));
}

TEST_CASE("no message goes without a way out") {
    for (const fs::path& file : files_with(".expected")) {
        const std::string text = text_of(file);
        const auto count = [&](const std::string& word) {
            std::size_t found = 0;
            for (std::size_t at = text.find(word); at != std::string::npos;
                 at = text.find(word, at + 1))
                ++found;
            return found;
        };
        INFO(file.filename().string());
        CHECK(count(": error: ") + count(": warning: ") + count(": note: ") == count("\n  hint: "));
    }
}
