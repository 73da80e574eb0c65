// The wording files of the checkout, as the program loads them.
#pragma once

#include "words/catalogue.hpp"

#include <algorithm>
#include <catch2/catch.hpp>
#include <deque>
#include <filesystem>
#include <fstream>
#include <iterator>

namespace sentences {

inline std::string read_file(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

inline std::vector<std::filesystem::path> files(const std::string& language) {
    std::vector<std::filesystem::path> out;
    for (const auto& item :
         std::filesystem::directory_iterator(SOURCE_DIR "/templates/words/" + language))
        out.push_back(item.path());
    std::ranges::sort(out);
    return out;
}

/// One language, read once; the test fails on any finding.
inline const words::Catalogue& catalogue(const std::string& language) {
    static std::map<std::string, words::Catalogue> all;
    static std::deque<diag::Source> sources;
    const auto known = all.find(language);
    if (known != all.end()) return known->second;
    diag::Findings findings;
    words::Catalogue read(language);
    const auto load = [&](const std::string& from, bool over) {
        for (const auto& path : files(from)) {
            const auto& source = sources.emplace_back(path.filename().string(), read_file(path));
            over ? read.replace(source, findings) : read.add(source, findings);
        }
    };
    const std::string base(words::base_language(language));
    load(base.empty() ? language : base, false);
    if (!base.empty()) load(language, true);
    for (const auto& finding : findings.list())
        FAIL(diag::print(finding));
    return all.emplace(language, std::move(read)).first->second;
}

inline words::Speaker speaker(const std::string& language, words::Voice voice = {}) {
    return {catalogue(language), voice};
}

} // namespace sentences
