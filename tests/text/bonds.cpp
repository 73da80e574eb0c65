#include "text/bonds.hpp"

#include "text/pango_typesetter.hpp"

#include <catch2/catch.hpp>

#include <string>

namespace {

/// The text with '~' for each space that no line ends at.
std::string held(std::string words) {
    for (const std::size_t at : text::bonds(words)) {
        REQUIRE(words.at(at) == ' ');
        words[at] = '~';
    }
    return words;
}

ink::Style style(double size = 11) {
    ink::Style out;
    out.family = "Lato", out.size = size, out.weight = 400;
    return out;
}

std::vector<std::string> lines(const std::string& words, double width) {
    std::vector<std::string> out;
    for (const auto& line : text::PangoTypesetter().set(words, style(), width, 15).lines)
        out.push_back(line.text);
    return out;
}

} // namespace

TEST_CASE("a number stays with what it counts, in every language of the sheets") {
    CHECK(held("Next lesson: 28 May 2026") == "Next lesson: 28~May~2026");
    CHECK(held("am 18. Februar 2026") == "am 18.~Februar~2026");
    CHECK(held("14 de mayo de 2026") == "14~de~mayo de~2026");
    CHECK(held("12 of 12 later shots") == "12~of~12~later shots");
    CHECK(held("0.7° further right") == "0.7°~further right");
}

TEST_CASE("a name stays with its number at the end of a phrase") {
    CHECK(held("About 5 minutes. Page 11.") == "About 5~minutes. Page~11.");
    CHECK(held("wie Eisen 7 mit Loft") == "wie Eisen~7 mit Loft");
    CHECK(held("page 5 of 8") == "page 5~of~8");
    CHECK(held("entre fer 6 et fer 7 courants") == "entre fer~6 et fer~7 courants");
    CHECK(held("cannot tell yet, 5. März") == "cannot tell yet, 5.~März");
}

TEST_CASE("arrows lead to the next word, dashes follow the last, letters hold their name") {
    CHECK(held("a gap shows → no gap") == "a gap shows →~no gap");
    CHECK(held("slow – then quick · A Place") == "slow~– then quick~· A~Place");
}

TEST_CASE("words without a number or a mark are free, whatever their bytes") {
    for (const char* words : {"", " ", "   ", "one two", "\n\n a\n b", "3", "3\n4", "→", "· ",
                              "é à ñ", "\xC3 \xFF\xFE 5", "5 ", " 5"})
        for (const std::size_t at : text::bonds(words))
            CHECK(std::string(words).at(at) == ' ');
    CHECK(text::bonds("Two knuckles when you look down").empty());
}

TEST_CASE("no line ends between a number and its word where there is room") {
    for (double width = 60; width < 200; width += 3)
        for (const auto& line :
             lines("Bring these pages on 28 May and ring on 18. Februar.", width)) {
            CAPTURE(width, line);
            CHECK_FALSE((line.ends_with(" 28") || line == "28"));
            CHECK_FALSE((line.ends_with(" 18.") || line == "18."));
        }
}

TEST_CASE("a bond never tears a word where a free line would not have") {
    for (double width = 40; width < 120; width += 1)
        for (const auto& line : lines("16 September and 5 Kilometres", width)) {
            CAPTURE(width, line);
            for (const char* torn : {"Septembe", "Septemb", "Septem", "Kilometre", "Kilometr"})
                if (width >= 62) CHECK_FALSE(line.ends_with(torn));
        }
}

TEST_CASE("a paragraph does not end in a short word alone when a line above can spare one") {
    const std::string words = "All of the change in start direction came with the face.";
    std::size_t broken = 0;
    for (double width = 120; width < 290; width += 2) {
        const auto set = lines(words, width);
        if (set.size() < 2) continue;
        ++broken;
        CAPTURE(width);
        CHECK(set.back() != "face.");
    }
    CHECK(broken > 50);
    // nothing is lost, nothing added, and no line is longer than asked
    for (double width = 30; width < 300; width += 7) {
        std::string all;
        for (const auto& line : text::PangoTypesetter().set(words, style(), width, 15).lines) {
            CHECK(line.width <= width + 0.01);
            all += line.text;
        }
        std::string plain = words;
        std::erase(plain, ' ');
        std::erase(all, ' ');
        CHECK(all == plain);
    }
}
