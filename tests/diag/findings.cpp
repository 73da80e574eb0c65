#include "diag/finding.hpp"
#include "diag/utf8.hpp"

#include <catch2/catch.hpp>

using diag::Findings;
using diag::Source;

TEST_CASE("a finding is printed with its place, its line, a caret and a way out") {
    const Source source("shots.csv", "a,b\n7i,after,31.2,15O,-2.1\n");
    Findings findings;
    findings.error(source.in_line(2, 14, 3), "carry must be a distance, found '15O'",
                   "write digits");
    CHECK(diag::print(findings.list()[0]) ==
          "shots.csv:2:15: error: carry must be a distance, found '15O'\n"
          "    2 | 7i,after,31.2,15O,-2.1\n"
          "      |               ^~~\n"
          "  hint: write digits\n");
}

TEST_CASE("columns count code points and the caret stands under wide and combining letters") {
    const Source source("a.yaml", "名前: e\u0301 x\n");
    const diag::Span span = source.at(source.text().find('x'));
    CHECK(span.column == 8);
    Findings findings;
    findings.warning(span, "here");
    CHECK(diag::print(findings.list()[0]) ==
          "a.yaml:1:8: warning: here\n    1 | 名前: e\u0301 x\n      |         ^\n");
}

TEST_CASE("a long line is cut around the place and control characters never reach the terminal") {
    const std::string line = std::string(300, 'x') + "\t\x1b[31m" + std::string(300, 'y');
    const Source source("long.csv", line);
    Findings findings;
    findings.error(source.at(301, 1), "an escape");
    const std::string text = diag::print(findings.list()[0]);
    CHECK(text.find('\x1b') == std::string::npos);
    CHECK(text.find("→·[31m") != std::string::npos);
    CHECK(text.size() < 400);
}

TEST_CASE("colour wraps the same words") {
    Findings findings;
    findings.note({}, "something");
    CHECK(diag::print(findings.list()[0], true).find("\x1b[1;36mnote:\x1b[0m something") !=
          std::string::npos);
}

TEST_CASE("twenty findings are printed, errors first, and the rest is counted") {
    const Source source("a.csv", std::string(100, '\n'));
    Findings findings;
    for (std::uint32_t i = 0; i < 25; ++i)
        findings.warning(source.whole(), "w");
    for (std::uint32_t i = 0; i < 8; ++i)
        findings.error(source.in_line(8 - i, 0), "e");
    const std::string text = diag::print_all(findings);
    CHECK(text.starts_with("a.csv:1:1: error: e"));
    CHECK(text.find("a.csv:8:1: error: e") < text.find("warning"));
    CHECK(text.ends_with("and 13 more\n"));
    CHECK(diag::print_all(Findings()).empty());
}

TEST_CASE("a flood of findings is counted but not kept") {
    Findings findings;
    for (int i = 0; i < 5000; ++i)
        findings.error({}, "e");
    CHECK(findings.errors() == 5000);
    CHECK(findings.list().size() == Findings::kept);
}

TEST_CASE("the nearest word forgives a swap, a letter and capitals, not a different word") {
    const std::vector<std::string_view> known{"knuckles", "thumb side", "heel pad", "path", "face"};
    CHECK(diag::nearest("knuckels", known) == "knuckles");
    CHECK(diag::nearest("Thumb_side", known) == "thumb side");
    CHECK(diag::nearest("FACE", known) == "face");
    CHECK(diag::nearest("clubpath", known) == "path");
    CHECK(diag::nearest("weather", known).empty());
    CHECK(diag::nearest("", known).empty());
    CHECK(diag::nearest(std::string(100000, 'a'), known).empty());
}

TEST_CASE("lines end at a line feed with or without a carriage return") {
    const Source source("a", "\xEF\xBB\xBFone\r\ntwo\n\nfour");
    CHECK(source.line_count() == 4);
    CHECK(source.line(1) == "one");
    CHECK(source.line(3).empty());
    CHECK(source.line(4) == "four");
    CHECK(source.line(5).empty());
    CHECK(source.at(source.text().size()).line == 4);
}

TEST_CASE("overlong forms, surrogates and lone bytes are not UTF-8") {
    // RFC 3629, section 3 and 10.
    for (const std::string_view bytes :
         {"\xC0\x80", "\xE0\x80\x80", "\xED\xA0\x80", "\xF5\x80\x80\x80", "\x80", "\xE2\x82"})
        CHECK_FALSE(diag::first_code_point(bytes).valid);
    CHECK(diag::first_code_point("€").value == U'\u20AC');
    CHECK(diag::code_points("a€\xFFz") == 4);
}
