#include "output/cabinet.hpp"

#include <catch2/catch.hpp>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <thread>
#include <unistd.h>
#include <vector>

namespace {

namespace fs = std::filesystem;
using output::Cabinet;

struct Folder {
    fs::path path;
    Folder() {
        std::string name = (fs::temp_directory_path() / "cabinet-XXXXXX").string();
        REQUIRE(mkdtemp(name.data()));
        path = name;
    }
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    ~Folder() {
        std::error_code gone;
        fs::remove_all(path, gone);
    }
    std::vector<fs::path> files() const {
        std::vector<fs::path> out;
        for (const auto& entry : fs::recursive_directory_iterator(path))
            if (entry.is_regular_file()) out.push_back(entry.path());
        return out;
    }
};

std::string read(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

void write(const fs::path& path, const std::string& text) {
    std::ofstream(path, std::ios::binary | std::ios::trunc) << text;
}

} // namespace

TEST_CASE("what was kept is found by its key, by another run too") {
    const Folder folder;
    const std::string bytes("a\0b\xff", 4);
    Cabinet(folder.path / "new" / "deeper").keep("one", bytes);
    CHECK(Cabinet(folder.path / "new" / "deeper").find("one") == bytes);
    CHECK_FALSE(Cabinet(folder.path / "new" / "deeper").find("two"));
    CHECK(folder.files().size() == 1);
}

TEST_CASE("a file that is cut, lengthened or spoilt anywhere is not found") {
    const Folder folder;
    Cabinet cabinet(folder.path);
    cabinet.keep("key", "some bytes");
    const fs::path file = folder.files().at(0);
    const std::string whole = read(file);
    for (std::size_t n = 0; n < whole.size(); ++n) {
        write(file, whole.substr(0, n));
        CHECK_FALSE(cabinet.find("key"));
        std::string spoilt = whole;
        spoilt[n] = char(spoilt[n] ^ 1);
        write(file, spoilt);
        CHECK_FALSE(cabinet.find("key"));
    }
    write(file, whole + "x");
    CHECK_FALSE(cabinet.find("key"));
    cabinet.keep("key", "some bytes");
    CHECK(cabinet.find("key") == "some bytes");
}

TEST_CASE("a file of another key under the same name is not taken") {
    const Folder folder;
    Cabinet cabinet(folder.path);
    cabinet.keep("key", "mine");
    const fs::path mine = folder.files().at(0);
    cabinet.keep("yek", "other");
    for (const auto& file : folder.files())
        if (file != mine) fs::copy_file(file, mine, fs::copy_options::overwrite_existing);
    CHECK_FALSE(cabinet.find("key"));
}

TEST_CASE("the folder stays below its limit and the longest unused go first") {
    const Folder folder;
    const std::string bytes(1000, 'x');
    const auto now = fs::file_time_type::clock::now();
    Cabinet(folder.path).keep("first", bytes);
    fs::last_write_time(folder.files().at(0), now - std::chrono::hours(48));
    Cabinet cabinet(folder.path, 20'000);
    for (int i = 0; i < 60; ++i) {
        cabinet.keep("key " + std::to_string(i), bytes);
        std::uintmax_t sum = 0;
        for (const auto& file : folder.files())
            sum += fs::file_size(file);
        CHECK(sum <= 20'000);
    }
    CHECK(folder.files().size() >= 10);
    CHECK(cabinet.find("key 59"));
    CHECK_FALSE(cabinet.find("first"));
    cabinet.keep("too large", std::string(30'000, 'x'));
    CHECK_FALSE(cabinet.find("too large"));
}

TEST_CASE("what a broken run left behind is swept out after an hour") {
    const Folder folder;
    write(folder.path / "0123.kept.AbCdEf", "half");
    fs::last_write_time(folder.path / "0123.kept.AbCdEf",
                        fs::file_time_type::clock::now() - std::chrono::hours(2));
    write(folder.path / "4567.kept.AbCdEf", "another run is writing this");
    write(folder.path / "notes.txt", "none of ours");
    Cabinet(folder.path).keep("key", "bytes");
    CHECK_FALSE(fs::exists(folder.path / "0123.kept.AbCdEf"));
    CHECK(fs::exists(folder.path / "4567.kept.AbCdEf"));
    CHECK(fs::exists(folder.path / "notes.txt"));
}

TEST_CASE("a folder that cannot be written, or that goes away, is no cabinet and no fault") {
    const Folder folder;
    write(folder.path / "file", "in the way");
    Cabinet blocked(folder.path / "file" / "below");
    blocked.keep("key", "bytes");
    CHECK_FALSE(blocked.find("key"));
    Cabinet nowhere{fs::path()};
    nowhere.keep("key", "bytes");
    CHECK_FALSE(nowhere.find("key"));
    Cabinet removed(folder.path / "gone");
    removed.keep("key", "bytes");
    fs::remove_all(folder.path / "gone");
    CHECK_FALSE(removed.find("key"));
    removed.keep("key", "again");
    CHECK(removed.find("key") == "again");
}

TEST_CASE("several threads keep and find at once") {
    const Folder folder;
    Cabinet cabinet(folder.path, 50'000);
    std::vector<std::thread> threads;
    for (int t = 0; t < 4; ++t)
        threads.emplace_back([&] {
            for (int i = 0; i < 100; ++i) {
                const std::string key = std::to_string(i % 40),
                                  bytes(500 + std::size_t(i % 40), 'b');
                cabinet.keep(key, bytes);
                const auto found = cabinet.find(key);
                if (found && *found != bytes) std::abort();
            }
        });
    for (auto& t : threads)
        t.join();
    CHECK(cabinet.find("39"));
}

// XDG Base Directory Specification 0.8: a path in the variable must be absolute, else it is
// ignored.
TEST_CASE("the folder follows the environment") {
    const auto with = [](const char* cache, const char* home) {
        cache ? setenv("XDG_CACHE_HOME", cache, 1) : unsetenv("XDG_CACHE_HOME");
        home ? setenv("HOME", home, 1) : unsetenv("HOME");
        return output::cabinet_folder();
    };
    const char* const cache = std::getenv("XDG_CACHE_HOME");
    const char* const home = std::getenv("HOME");
    const std::string old_cache = cache ? cache : "", old_home = home ? home : "";
    CHECK(with("/c", "/h") == "/c/lessonleaf");
    CHECK(with("relative", "/h") == "/h/.cache/lessonleaf");
    CHECK(with("", "/h") == "/h/.cache/lessonleaf");
    CHECK(with(nullptr, "/h") == "/h/.cache/lessonleaf");
    CHECK(with(nullptr, nullptr).empty());
    with(cache ? old_cache.c_str() : nullptr, home ? old_home.c_str() : nullptr);
}
