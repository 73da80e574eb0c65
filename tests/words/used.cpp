// The keys and holes that the program's own source names.
#include "sentences.hpp"

#include <regex>
#include <set>

namespace {

/// From the opening parenthesis at `at` to the closing one that belongs to it.
std::string call_text(const std::string& text, std::size_t at) {
    int depth = 0;
    bool quoted = false;
    for (auto end = at; end < text.size(); ++end) {
        if (text[end] == '"' && text[end - 1] != '\\') quoted = !quoted;
        if (quoted) continue;
        if (text[end] == '(') ++depth;
        if (text[end] == ')' && --depth == 0) return text.substr(at, end - at);
    }
    return text.substr(at);
}

} // namespace

TEST_CASE("every sentence that the source says by name exists, and its holes are filled") {
    const auto& catalogue = sentences::catalogue("en-GB");
    const std::regex say("\\bsay(\\()\\s*\"([a-z0-9-]+\\.[a-z0-9.-]+)\"\\s*([,)])"),
        hole("\\{\\s*\"(\\w[\\w-]*)\"\\s*,");
    std::size_t calls = 0;
    for (const auto& item : std::filesystem::recursive_directory_iterator(SOURCE_DIR "/src")) {
        if (item.path().extension() != ".cpp" && item.path().extension() != ".hpp") continue;
        const auto text = sentences::read_file(item.path());
        for (std::sregex_iterator call(text.begin(), text.end(), say), end; call != end; ++call) {
            ++calls;
            const auto key = (*call)[2].str();
            CAPTURE(item.path().filename().string(), key);
            if (!catalogue.has(key)) {
                FAIL_CHECK("no sentence has this key");
                continue;
            }
            const auto whole = call_text(text, static_cast<std::size_t>(call->position(1)));
            std::set<std::string> filled;
            for (std::sregex_iterator at(whole.begin(), whole.end(), hole); at != end; ++at)
                filled.insert((*at)[1].str());
            const bool holes_by_name = (*call)[3] == ")" || !filled.empty();
            if (!holes_by_name) continue; // the holes come in a variable
            for (const auto& name : catalogue.holes(key)) {
                CAPTURE(name);
                if (!filled.contains(name)) FAIL_CHECK("this hole is not filled");
            }
        }
    }
    CHECK(calls > 50);
}
