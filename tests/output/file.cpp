#include "output/file.hpp"

#include "tool.hpp"

#include <catch2/catch.hpp>

#include <atomic>
#include <csignal>
#include <filesystem>
#include <fstream>
#include <sys/resource.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

namespace fs = std::filesystem;

namespace {

using Catch::Matchers::Contains;

fs::path fresh_folder() {
    const fs::path folder = scratch("files");
    fs::remove_all(folder);
    fs::create_directories(folder);
    return folder;
}

std::size_t entries(const fs::path& folder) {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), {}));
}

} // namespace

TEST_CASE("a file is written whole, replaces the old one and leaves nothing beside it") {
    const auto folder = fresh_folder();
    const auto target = (folder / "sheet.pdf").string();
    output::write_file(target, "one");
    fs::permissions(target, fs::perms::owner_read | fs::perms::owner_write);
    output::write_file(target, "two");
    CHECK(slurp(target) == "two");
    CHECK(entries(folder) == 1);
    CHECK(fs::status(target).permissions() == (fs::perms::owner_read | fs::perms::owner_write));
}

TEST_CASE("a link to a file stays a link") {
    const auto folder = fresh_folder();
    output::write_file((folder / "real.pdf").string(), "one");
    fs::create_symlink("real.pdf", folder / "link.pdf");
    output::write_file((folder / "link.pdf").string(), "two");
    CHECK(fs::is_symlink(folder / "link.pdf"));
    CHECK(slurp((folder / "real.pdf").string()) == "two");
}

TEST_CASE("an input is never overwritten, however it is spelt") {
    const auto folder = fresh_folder();
    const auto input = (folder / "lesson.yaml").string();
    output::write_file(input, "student: Mel");
    const auto odd = (folder / "." / ".." / folder.filename() / "lesson.yaml").string();
    fs::create_hard_link(input, folder / "other.yaml");
    for (const auto& target : {input, odd, (folder / "other.yaml").string()})
        CHECK_THROWS_WITH(output::write_file(target, "pdf", {input}),
                          Contains("it is an input of this run"));
    CHECK(slurp(input) == "student: Mel");
    CHECK(entries(folder) == 2);
}

TEST_CASE("what cannot be written is said with its reason, before the work") {
    const auto folder = fresh_folder();
    CHECK_THROWS_WITH(output::check_target((folder / "no" / "a.pdf").string()),
                      Contains("there is no folder"));
    CHECK_THROWS_WITH(output::check_target(folder.string()), Contains("it is a folder"));
    CHECK_THROWS_WITH(output::check_target("/dev/null"), Contains("not a regular file"));
    CHECK_THROWS_WITH(output::check_target(""), Contains("the name is empty"));
    CHECK_NOTHROW(output::check_target("-"));
    CHECK(entries(folder) == 0);
}

TEST_CASE("a failure half way keeps the old file and leaves nothing behind") {
    const auto folder = fresh_folder();
    const auto target = (folder / "sheet.pdf").string();
    output::write_file(target, "old");
    // A limit on file size makes the write itself fail, as a full disk would.
    const pid_t child = fork();
    if (child == 0) {
        const rlimit small{4096, 4096};
        setrlimit(RLIMIT_FSIZE, &small);
        std::signal(SIGXFSZ, SIG_IGN);
        try {
            output::write_file(target, std::string(100000, 'x'));
        } catch (const output::CannotWrite&) {
            _exit(7);
        }
        _exit(0);
    }
    int status = 0;
    waitpid(child, &status, 0);
    CHECK((WIFEXITED(status) && WEXITSTATUS(status) == 7));
    CHECK(slurp(target) == "old");
    CHECK(entries(folder) == 1);
}

namespace {

/// Eight writers that follow one another without a pause, and then the end: 0 when nobody is at
/// work any more.
int busy_folder_at_the_end(const fs::path& folder) {
    for (int i = 0; i < 8; ++i)
        std::thread([=] {
            while (true)
                output::write_file((folder / std::to_string(i)).string(), "a sheet");
        }).detach();
    const auto written = [&] {
        int count = 0;
        for (int i = 0; i < 8; ++i)
            count += fs::exists(folder / std::to_string(i)) ? 1 : 0;
        return count;
    };
    while (written() < 8)
        std::this_thread::yield();
    output::finish_writing();
    for (int look = 0; look < 500; ++look)
        for (const auto& entry : fs::directory_iterator(folder))
            if (entry.path().filename().string().starts_with('.')) return 1;
    return 0;
}

} // namespace

TEST_CASE("the end waits for the files under way, however many want to follow") {
    const auto folder = fresh_folder();
    const pid_t child = fork(); // whose writers never come back
    if (child == 0) _exit(busy_folder_at_the_end(folder));
    int status = -1;
    REQUIRE(waitpid(child, &status, 0) == child);
    CHECK(WIFEXITED(status));
    CHECK(WEXITSTATUS(status) == 0);
    CHECK(entries(folder) == 8);
}

TEST_CASE("a sweep never takes the file of a writer at work for a leftover") {
    const auto folder = fresh_folder();
    std::ofstream(folder / ".old.pdf.unfinished-abc123") << "cut off";
    std::atomic<bool> over = false;
    std::thread broom([&] {
        while (!over)
            output::sweep((folder / "").string());
    });
    int failed = 0;
    for (int i = 0; i < 1000; ++i) {
        try {
            output::write_file((folder / std::to_string(i)).string(), "a sheet");
        } catch (const output::CannotWrite&) {
            ++failed;
        }
    }
    over = true;
    broom.join();
    CHECK(failed == 0);
    CHECK(entries(folder) == 1000); // and the leftover is gone
}
