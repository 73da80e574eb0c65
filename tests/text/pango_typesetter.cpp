#include "text/pango_typesetter.hpp"

#include "text/shaped.hpp"

#include <catch2/catch.hpp>

#include <cstdlib>

namespace {

ink::Style style(const char* family = "Lato", double size = 10, int weight = 400) {
    ink::Style out;
    out.family = family, out.size = size, out.weight = weight;
    return out;
}

std::string text_of(const ink::Words& words) {
    std::string out;
    for (const auto& run : words.shaped->runs)
        out += run.text;
    return out;
}

std::size_t glyphs(const ink::Words& words) {
    std::size_t out = 0;
    for (const auto& run : words.shaped->runs)
        out += run.glyphs.size();
    return out;
}

} // namespace

TEST_CASE("widths scale with the size: no hinting and no rounding") {
    const text::PangoTypesetter setter;
    const char* words = "Where the ball starts, and where it ends";
    CHECK(setter.line(words, style("Lato", 9)).width * 10 ==
          Approx(setter.line(words, style("Lato", 90)).width).epsilon(0.0005));
}

TEST_CASE("neither font settings nor the language of the user change a width") {
    const char* words = "Zażółć gęślą jaźń, в цифрах: 171 m";
    const auto before = text::PangoTypesetter().line(words, style()).width;
    for (const char* name : {"FONTCONFIG_FILE", "FONTCONFIG_PATH", "XDG_CONFIG_HOME", "HOME"})
        setenv(name, "/nowhere", 1);
    for (const char* name : {"LANG", "LANGUAGE", "LC_ALL"})
        setenv(name, "bg_BG.UTF-8", 1);
    CHECK(text::PangoTypesetter().line(words, style()).width == before);
}

TEST_CASE("letters are kerned and ligatures stay the text they were") {
    const text::PangoTypesetter setter;
    for (const char* family : {"Lato", "Vollkorn"}) {
        const auto width = [&](const char* words) {
            return setter.line(words, style(family)).width;
        };
        CHECK(width("AV") < width("A") + width("V") - 0.2);
        CHECK(width("To") < width("T") + width("o") - 0.2);
        const auto fi = setter.line("efficient", style(family));
        CHECK(text_of(fi) == "efficient");
    }
}

TEST_CASE("tabular figures are all of one width, in every face") {
    const text::PangoTypesetter setter;
    for (const char* family : {"Lato", "Vollkorn"})
        for (const int weight : {400, 700}) {
            auto tabular = style(family, 10, weight);
            tabular.tabular = true;
            const auto one = setter.line("1111", tabular).width;
            for (const char* other : {"0000", "7777", "8888", "4949"})
                CHECK(setter.line(other, tabular).width == Approx(one).margin(0.01));
            CHECK(setter.line("1111", style(family, 10, weight)).width < one);
        }
}

TEST_CASE("weights and slopes are faces of their own; a weight in between takes the nearest") {
    const text::PangoTypesetter setter;
    const auto width = [&](int weight, bool italic) {
        auto s = style("Lato", 10, weight);
        s.italic = italic;
        return setter.line("Before and after", s).width;
    };
    CHECK(width(400, false) < width(700, false));
    CHECK(width(700, false) < width(900, false));
    CHECK(width(400, true) != width(400, false));
    CHECK(width(720, false) == width(700, false));
    CHECK(text::family("Vollkorn").face(450, true).file == "Vollkorn-MediumItalic.ttf");
}

TEST_CASE("tracking opens the space between letters, not around them") {
    const text::PangoTypesetter setter;
    auto tracked = style();
    tracked.tracking = 1.5;
    const auto plain = setter.line("BEFORE", style()).width;
    CHECK(setter.line("BEFORE", tracked).width - plain == Approx(5 * 1.5).margin(0.01));
}

TEST_CASE("no line is wider than asked, and all words are there") {
    const text::PangoTypesetter setter;
    const std::string words =
        "The hands close the face a little earlier; the ball starts nearer to the "
        "line and Donaudampfschifffahrtsgesellschaft stays long.";
    for (const double width : {40.0, 77.7, 150.0, 400.0}) {
        const auto lines = setter.set(words, style("Lato", 11), width, 15);
        std::string all;
        for (const auto& line : lines.lines) {
            CHECK(line.width <= width + 0.002);
            all += line.text;
        }
        std::string expected = words;
        std::erase(expected, ' ');
        std::erase(all, ' ');
        CHECK(all == expected);
        CHECK(lines.height == Approx(15.0 * static_cast<double>(lines.lines.size())));
    }
}

TEST_CASE("a text breaks at its soft hyphen with a hyphen, and nowhere shows another one") {
    const text::PangoTypesetter setter;
    const char* words = "club\u00ADface";
    const auto whole = setter.line(words, style());
    CHECK(whole.text == "clubface");
    CHECK(whole.width == Approx(setter.line("clubface", style()).width).margin(0.01));
    const auto lines = setter.set(words, style(), whole.width * 0.8, 12);
    REQUIRE(lines.lines.size() == 2);
    CHECK(lines.lines[0].text == "club\u00AD");
    CHECK(lines.lines[0].width > setter.line("club", style()).width + 2);
    CHECK(lines.lines[1].text == "face");
}

TEST_CASE("a non-breaking space holds a number and its unit together") {
    const text::PangoTypesetter setter;
    const auto width = setter.line("carry 171", style()).width + 1;
    const auto lines = setter.set("carry 171\u00A0m", style(), width, 12);
    REQUIRE(lines.lines.size() == 2);
    CHECK(lines.lines[0].text == "carry");
    CHECK(lines.lines[1].text == "171\u00A0m");
}

TEST_CASE("right-to-left names run from right to left and Arabic letters join") {
    const text::PangoTypesetter setter;
    for (const char* name : {"\u05DE\u05E8\u05D9\u05DD", "\u0645\u0631\u064A\u0645"}) {
        INFO(name);
        REQUIRE(setter.missing(name, style()).empty());
        const auto set = setter.line(name, style());
        REQUIRE(set.shaped->runs.size() == 1);
        CHECK(set.shaped->runs[0].backward);
        CHECK(text_of(set) == name);
        double alone = 0;
        const std::string letters(name);
        for (std::size_t at = 0; at < letters.size(); at += 2)
            alone += setter.line(letters.substr(at, 2), style()).width;
        const bool arabic = letters[0] == '\xD9';
        if (arabic) CHECK(set.width < alone - 1);
    }
    const auto mixed = setter.line("Mel \u05DE\u05E8\u05D9\u05DD 7", style());
    REQUIRE(mixed.shaped->runs.size() >= 2);
    CHECK_FALSE(mixed.shaped->runs.front().backward);
}

TEST_CASE("every name is set or reported missing, letter by letter") {
    const text::PangoTypesetter setter;
    for (const char* name :
         {"Μαρία Παπαδοπούλου", "Ольга Щукина", "Łukasz Żółć", "Nguyễn Thị Hồng"}) {
        INFO(name);
        CHECK(setter.missing(name, style()).empty());
    }
    const char* japanese = "\u3055\u304F\u3089";
    const auto missing = setter.missing(japanese, style());
    if (missing.empty())
        CHECK(setter.line(japanese, style()).width == Approx(30).margin(3));
    else
        CHECK(missing == std::vector<char32_t>{0x3055, 0x304F, 0x3089});
    CHECK(setter.missing("a\U00013000b\U00013000\n\u00AD", style()) ==
          std::vector<char32_t>{0x13000});
}

TEST_CASE("what was set before has no say in what is set next") {
    const text::PangoTypesetter used;
    for (const char* name : {"\u05DE\u05E8\u05D9\u05DD", "\u0E01\u0E02", "\u2713 \u2192"})
        (void)used.line(name, style());
    for (const char* words : {"plain", "\u2713 done", "\u05DE 1"})
        CHECK(used.line(words, style()).width ==
              text::PangoTypesetter().line(words, style()).width);
}

TEST_CASE("clusters account for every byte and every glyph") {
    const text::PangoTypesetter setter;
    for (const char* words :
         {"efficient flight", "\u0645\u0631\u064A\u0645 ab", "e\u0301le\u0300ve", ""}) {
        const auto set = setter.line(words, style("Vollkorn"));
        std::size_t bytes = 0, count = 0;
        for (const auto& run : set.shaped->runs)
            for (const auto& cluster : run.clusters) {
                bytes += static_cast<std::size_t>(cluster.num_bytes);
                count += static_cast<std::size_t>(cluster.num_glyphs);
            }
        CHECK(bytes == text_of(set).size());
        CHECK(count == glyphs(set));
    }
}

TEST_CASE("a family outside the set or not installed is named with its package") {
    const text::PangoTypesetter setter;
    CHECK_THROWS_WITH(setter.line("a", style("Comic")),
                      "the font set has no family 'Comic'; it has 'Lato', 'Vollkorn'");
    const text::PangoTypesetter nowhere("/nowhere");
    CHECK_THROWS_WITH(
        nowhere.line("a", style()),
        "the font file '/nowhere/truetype/lato/Lato-Regular.ttf' cannot be read; add it "
        "with: apt-get install fonts-lato");
    diag::Findings findings;
    text::check_fonts(findings, "/nowhere");
    CHECK(findings.errors() == 2);
    CHECK(findings.list()[1].hint == "add it with: apt-get install fonts-vollkorn");
    diag::Findings here;
    text::check_fonts(here);
    CHECK(here.clean());
}

TEST_CASE("the gap before a unit is smaller than a word's, and nothing else is") {
    const text::PangoTypesetter setter;
    const auto width = [&](const char* words) { return setter.line(words, style()).width; };
    for (const char* unit : {"%", "yd", "°C", "km/h"}) {
        const std::string with_gap = std::string("80\u00A0") + unit,
                          words = std::string("80 ") + unit;
        CHECK(width(with_gap.c_str()) == Approx(width(words.c_str()) - 0.5).margin(0.01));
        CHECK(text_of(setter.line(with_gap, style())) == with_gap);
    }
    CHECK(width("1\u00A0000") == Approx(width("1 000")).margin(0.01));
    CHECK(width("a\u00A0b") == Approx(width("a b")).margin(0.01));
}
