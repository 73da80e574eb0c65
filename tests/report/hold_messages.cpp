// What the posed hand has to say of a record, stored whole beside the input that causes it.
// LESSONLEAF_ACCEPT=1 writes the expectations anew: read each of them before committing.
#include "record/read_lesson.hpp"
#include "report/tell.hpp"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace {

namespace fs = std::filesystem;

std::string text_of(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

std::string messages_of(const fs::path& file) {
    const diag::Source source(file.filename().string(), text_of(file));
    diag::Findings findings;
    const record::Lesson lesson = record::read_lesson(source, findings);
    record::check_lesson(lesson, findings);
    const std::vector<drills::Drill> none;
    report::tell({lesson, nullptr, none}, findings);
    return diag::print_all(findings);
}

} // namespace

TEST_CASE("what does not fit together in a hold is told at its place, once") {
    const bool accept = std::getenv("LESSONLEAF_ACCEPT") != nullptr;
    int files = 0;
    for (const auto& entry : fs::directory_iterator(TESTS_DIR "/messages/hold")) {
        if (entry.path().extension() != ".yaml") continue;
        const fs::path expected = fs::path(entry.path()).replace_extension(".expected");
        const std::string messages = messages_of(entry.path());
        if (accept) std::ofstream(expected, std::ios::binary) << messages;
        INFO(entry.path().filename().string());
        CHECK(messages == text_of(expected));
        CHECK(messages.empty() == (entry.path().stem() == "fits-together"));
        ++files;
    }
    CHECK(files == 5);
}
