// What every sentence of the stock wording keeps to, in every language.
#include "sentences.hpp"

#include "words/lines.hpp"
#include "words/pattern.hpp"
#include "words/plural.hpp"

#include <regex>

using unit::Hand;

namespace {

std::vector<std::string> languages() {
    std::vector<std::string> out;
    for (const auto& item : std::filesystem::directory_iterator(SOURCE_DIR "/templates/words"))
        if (item.is_directory()) out.push_back(item.path().filename().string());
    std::ranges::sort(out);
    return out;
}

/// Calls `see(key, text)` for each sentence as each kind of reader gets it.
template <class See>
void each_sentence(const std::string& language, See&& see) {
    const auto& catalogue = sentences::catalogue(language);
    for (const auto key : catalogue.keys())
        for (const auto hand : {Hand::right, Hand::left})
            for (const bool junior : {false, true})
                for (const long sample : {0L, 1L, 2L, 5L}) {
                    words::Holes holes;
                    const auto names = catalogue.holes(key);
                    for (const auto& name : names)
                        holes.emplace_back(name, sample);
                    see(key, catalogue.say({hand, junior, {}}, key, holes));
                }
}

/// Words that claim more than a few shots can show, or belong in the list of words only.
const std::map<std::string, std::string> banned{
    {"en", "\\b(improv\\w*|proven|fixed|perfect\\w*|significant\\w*|consistent\\w*|average golfer|"
           "(good|bad|poor) shots?|fades?|slices?|hook|draws?(?! no conclusion)|because)\\b"},
    {"de", "verbesser|bewiesen|perfekt|signifikant|konstant|durchschnittsgolfer|slice|hook|fade\\b|"
           "\\bdraw\\b|(gute|schlechte)r? schl"},
    {"fr", "amélior|prouvé|parfait|significati|régulier|golfeur moyen|slice|hook|\\bfade|\\bdraw|"
           "(bon|mauvais) coup"},
    {"es", "mejorad|probado|perfect|significativ|consistente|golfista medio|slice|hook|\\bfade|"
           "\\bdraw|(buen|mal) golpe"},
    {"sv", "förbättr|bevisa|perfekt|signifikant|konsekvent|genomsnittsgolfare|slice|hook|\\bfade|"
           "\\bdraw|(bra|dåligt) slag"},
};

std::size_t most_words(const std::string& text) {
    std::size_t most = 0, words = 0;
    bool inside = false;
    for (std::size_t at = 0; at <= text.size(); ++at) {
        const char c = at < text.size() ? text[at] : ' ';
        if (c != ' ') {
            inside = true;
            continue;
        }
        if (inside) ++words;
        inside = false;
        if (at == text.size() ||
            (at > 0 && std::string_view(".?!:;").find(text[at - 1]) != std::string_view::npos)) {
            most = std::max(most, words);
            words = 0;
        }
    }
    return most;
}

} // namespace

TEST_CASE("every sentence can be said to both hands, to adults and to juniors") {
    for (const auto& language : languages())
        each_sentence(language, [&](std::string_view key, const std::string& text) {
            CAPTURE(language, key);
            if (text.empty()) CHECK(key == "a sentence without words");
        });
}

TEST_CASE("every translation has all sentences, with the same holes") {
    const auto& english = sentences::catalogue("en-GB");
    for (const auto& language : languages()) {
        if (language.starts_with("en")) continue; // en-US holds its differences only
        words::Catalogue own(language);
        diag::Findings findings;
        for (const auto& path : sentences::files(language)) {
            const diag::Source source(path.filename().string(), sentences::read_file(path));
            own.add(source, findings);
            CHECK(findings.clean());
        }
        for (const auto key : english.keys()) {
            CAPTURE(language, key);
            if (!own.has(key))
                FAIL_CHECK("the key is missing");
            else if (own.holes(key) != english.holes(key))
                CHECK(own.holes(key) == english.holes(key));
        }
    }
}

namespace {

/// The plural choices of a sentence, those inside its branches too.
void collect_plurals(const words::Pattern& pattern, std::vector<const words::Piece*>& into) {
    for (const auto& piece : pattern) {
        if (piece.kind == words::Piece::Kind::plural) into.push_back(&piece);
        for (const auto& branch : piece.branches)
            collect_plurals(branch.message, into);
    }
}

bool has_branch(const words::Piece& piece, const std::string& form, double number) {
    return std::ranges::any_of(piece.branches, [&](const words::Branch& branch) {
        return branch.exact ? *branch.exact == number : branch.selector == form;
    });
}

} // namespace

TEST_CASE("the complete languages are the ones a record may ask for") {
    CHECK(languages() == std::vector<std::string>{"de", "en-GB", "en-US", "es", "fr", "sv"});
}

// Which number takes which form is CLDR's, by ICU: one is 0 and 1 in French, 1 in the others.
// "many" (a million) never counts on a sheet; "other" says it.
TEST_CASE("a sentence that counts has each plural form its language asks for") {
    for (const auto& language : languages()) {
        const words::Plural rules(language);
        CHECK(rules.form(1) == "one");
        CHECK(rules.form(0) == (language == "fr" ? "one" : "other"));
        std::size_t counted = 0;
        for (const auto& path : sentences::files(language)) {
            const diag::Source source(path.filename().string(), sentences::read_file(path));
            diag::Findings findings;
            for (const auto& line : words::read_lines(source, findings)) {
                std::optional<words::PatternFault> fault;
                const auto pattern = words::read_pattern(line.text, fault);
                std::vector<const words::Piece*> plurals;
                collect_plurals(pattern, plurals);
                for (const auto* piece : plurals) {
                    ++counted;
                    const bool factor = line.key.starts_with("ballfigure.flight."); // from 2 on
                    for (const double number : {1.0, 2.0, 5.0, 12.0}) {
                        if (factor && number < 2) continue;
                        CAPTURE(language, line.key, number);
                        if (!has_branch(*piece, rules.form(number), number))
                            FAIL_CHECK("no form '" + rules.form(number) + "'");
                    }
                }
            }
        }
        if (language != "en-US") CHECK(counted > 20);
    }
}

TEST_CASE("French keeps its narrow no-break space before high marks and inside its quotes") {
    for (const auto& path : sentences::files("fr")) {
        const diag::Source source(path.filename().string(), sentences::read_file(path));
        diag::Findings findings;
        // Imprimerie nationale, Lexique des règles typographiques: the marks ; : ! ? « »
        const std::regex loose("(^|[^\xAF])([;:!?]|\xC2\xBB)|\xC2\xAB(?!\xE2\x80\xAF)");
        for (const auto& line : words::read_lines(source, findings)) {
            CAPTURE(line.key, line.text);
            CHECK_FALSE(std::regex_search(line.text, loose));
        }
    }
}

TEST_CASE("no sentence claims too much") {
    for (const auto& language : languages()) {
        const std::regex words(banned.at(language.substr(0, 2)), std::regex::icase);
        each_sentence(language, [&](std::string_view key, const std::string& text) {
            if (!std::regex_search(text, words)) return;
            CAPTURE(language, key);
            FAIL_CHECK(text);
        });
    }
}

TEST_CASE("an English sentence has at most fifteen words, apart from alternative texts") {
    for (const auto* language : {"en-GB", "en-US"}) {
        if (!std::filesystem::exists(std::string(SOURCE_DIR "/templates/words/") + language))
            continue;
        each_sentence(language, [&](std::string_view key, const std::string& text) {
            if (key.find("alt") != std::string_view::npos || most_words(text) <= 15) return;
            CAPTURE(key);
            FAIL_CHECK(text);
        });
    }
}

TEST_CASE("American English has no British spelling left") {
    const std::regex british("colour|centre|metre|practis|towards|\\bgrey|favour|\\bRing your",
                             std::regex::icase);
    each_sentence("en-US", [&](std::string_view key, const std::string& text) {
        if (!std::regex_search(text, british)) return;
        CAPTURE(key);
        FAIL_CHECK(text);
    });
}

TEST_CASE("quotation marks and apostrophes are the printed ones") {
    for (const auto& language : languages())
        each_sentence(language, [&](std::string_view key, const std::string& text) {
            if (text.find_first_of("'\"`") == std::string::npos) return;
            CAPTURE(language, key);
            FAIL_CHECK(text);
        });
}

TEST_CASE(
    "a left-hander is told left where a right-hander is told right, and nothing else differs") {
    const auto& catalogue = sentences::catalogue("en-GB");
    const std::regex handed("right|left|open|closed|in-to-out|out-to-in");
    for (const auto key : catalogue.keys()) {
        words::Holes holes;
        const auto names = catalogue.holes(key);
        for (const auto& name : names)
            holes.emplace_back(name, 3);
        const auto right = catalogue.say({Hand::right, false, {}}, key, holes);
        const auto left = catalogue.say({Hand::left, false, {}}, key, holes);
        CAPTURE(key, right, left);
        if (std::regex_replace(right, handed, "~") != std::regex_replace(left, handed, "~"))
            FAIL_CHECK("hands differ in more than their words");
    }
}

TEST_CASE("each caution of the stock wording is locked against being emptied") {
    words::Catalogue catalogue("en-GB");
    diag::Findings findings;
    std::deque<diag::Source> sources;
    for (const auto& path : sentences::files("en-GB"))
        catalogue.add(sources.emplace_back(path.filename().string(), sentences::read_file(path)),
                      findings);
    std::string emptied;
    std::size_t cautions = 0;
    for (const auto key : catalogue.keys())
        if (key.starts_with("caution.")) {
            emptied += std::string(key) + " =\n";
            ++cautions;
        }
    REQUIRE(cautions >= 25);
    REQUIRE(findings.clean());
    catalogue.replace(sources.emplace_back("house.txt", emptied), findings);
    CHECK(findings.errors() == cautions);
    for (const auto key : catalogue.keys())
        if (key.starts_with("caution.")) CHECK_FALSE(catalogue.say({}, key).empty());
}
