// The drills and clubs of the checkout.
#pragma once

#include "drills/clubs.hpp"
#include "drills/drill.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <deque>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace stock {

inline std::string read_file(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

inline std::vector<std::string> languages() {
    std::vector<std::string> out;
    for (const auto& item : std::filesystem::directory_iterator(SOURCE_DIR "/templates/drills"))
        out.push_back(item.path().filename().string());
    std::ranges::sort(out);
    return out;
}

/// Sources of the files of one language, in order.
inline std::vector<const diag::Source*> files_of(const std::string& language) {
    static std::deque<diag::Source> sources;
    std::vector<std::filesystem::path> files;
    for (const auto& item :
         std::filesystem::directory_iterator(SOURCE_DIR "/templates/drills/" + language))
        files.push_back(item.path());
    std::ranges::sort(files);
    std::vector<const diag::Source*> out;
    for (const auto& path : files)
        out.push_back(&sources.emplace_back(path.filename().string(), read_file(path)));
    return out;
}

inline void expect_none(const diag::Findings& findings) {
    for (const auto& finding : findings.list())
        FAIL_CHECK(diag::print(finding));
}

/// The library in the words of a language, as a sheet of it has it.
inline std::vector<drills::Drill> drills_of(const std::string& language) {
    diag::Findings findings;
    std::vector<drills::Drill> all;
    for (const auto* source : files_of("en"))
        for (auto& drill : drills::read_drills(*source, findings)) {
            CHECK(drills::find(all, drill.id) == nullptr);
            all.push_back(std::move(drill));
        }
    if (language != "en")
        for (const auto* source : files_of(language))
            all = drills::reworded(std::move(all), *source, findings);
    expect_none(findings);
    return all;
}

} // namespace stock
