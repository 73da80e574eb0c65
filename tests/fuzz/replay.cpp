// Runs one target without libFuzzer, with any compiler: every file that is named (and every file
// below the folders that are named), and a fixed number of changed copies of each. The changes come
// from a counter, so that each run is the same.
#include "entry.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <iterator>
#include <random>
#include <vector>

namespace {

namespace fs = std::filesystem;
using Bytes = std::vector<std::uint8_t>;

void run(const Bytes& bytes) { LLVMFuzzerTestOneInput(bytes.data(), bytes.size()); }

/// One change: a byte, a stretch doubled, cut, or put elsewhere; or a piece that often hurts.
void change(Bytes& bytes, std::mt19937& chance) {
    static const std::vector<std::string> pieces{std::string(1, '\0'),
                                                 "\xFF\xFE",
                                                 "\xED\xA0\x80",
                                                 "{",
                                                 "}",
                                                 "[",
                                                 "]",
                                                 "&a ",
                                                 "*a",
                                                 ": ",
                                                 "- ",
                                                 "\"",
                                                 "'",
                                                 "\n",
                                                 "\r",
                                                 "\t",
                                                 ",",
                                                 ";",
                                                 "%",
                                                 "1e999",
                                                 "-0",
                                                 "nan",
                                                 "inf",
                                                 "9999999999999999999",
                                                 "{a, plural, ",
                                                 std::string(300, '['),
                                                 std::string(300, '{'),
                                                 std::string(2000, 'a'),
                                                 "\xC2\xAD",
                                                 "\xE2\x80\xAE"};
    const auto at = [&](std::size_t size) { return size == 0 ? 0 : chance() % size; };
    const auto place = [&](std::size_t i) {
        return bytes.begin() + static_cast<std::ptrdiff_t>(i);
    };
    const std::size_t from = at(bytes.size());
    const std::size_t length = std::min<std::size_t>(bytes.size() - from, 1 + chance() % 40);
    const Bytes stretch(place(from), place(from + length));
    switch (chance() % 5) {
    case 0:
        if (!bytes.empty()) bytes[from] = static_cast<std::uint8_t>(chance());
        break;
    case 1:
        bytes.erase(place(from), place(from + length));
        break;
    case 2: {
        const auto& piece = pieces[chance() % pieces.size()];
        bytes.insert(place(from), piece.begin(), piece.end());
        break;
    }
    default: {
        const auto to = at(bytes.size());
        bytes.insert(place(to), stretch.begin(), stretch.end());
    }
    }
}

Bytes bytes_of(const fs::path& path, const std::string& before) {
    std::ifstream in(path, std::ios::binary);
    Bytes bytes(before.begin(), before.end());
    bytes.insert(bytes.end(), std::istreambuf_iterator<char>(in), {});
    return bytes;
}

std::vector<fs::path> files_of(const fs::path& path, const std::string& ending) {
    if (!fs::is_directory(path)) return {path};
    std::vector<fs::path> out;
    for (const auto& entry : fs::recursive_directory_iterator(path))
        if (entry.is_regular_file() && entry.path().string().ends_with(ending))
            out.push_back(entry.path());
    std::ranges::sort(out);
    return out;
}

} // namespace

/// replay COPIES BEFORE|PATH|ENDING...: BEFORE is put before the bytes of each file below PATH
/// whose name ends so; a '#' in it stands for a new line.
int main(int argc, char** argv) {
    const int copies = argc > 1 ? std::atoi(argv[1]) : 0;
    std::size_t ran = 0;
    for (int i = 2; i < argc; ++i) {
        const std::string word = argv[i];
        const auto bar = word.find('|'), last = word.rfind('|');
        std::string before = bar == word.npos ? std::string() : word.substr(0, bar);
        std::ranges::replace(before, '#', '\n');
        if (last == bar) return std::cerr << "not BEFORE|PATH|ENDING: " << word << "\n", 2;
        for (const auto& file :
             files_of(word.substr(bar + 1, last - bar - 1), word.substr(last + 1))) {
            const Bytes seed = bytes_of(file, before);
            std::mt19937 chance(static_cast<std::mt19937::result_type>(seed.size()));
            run(seed), ++ran;
            for (int copy = 0; copy < copies; ++copy, ++ran) {
                Bytes changed = seed;
                for (unsigned n = 1 + chance() % 4; n > 0; --n)
                    change(changed, chance);
                run(changed);
            }
        }
    }
    std::cout << ran << " inputs\n";
    return ran > 0 ? 0 : 1;
}
