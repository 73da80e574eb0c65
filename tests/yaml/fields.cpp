#include "yaml/field.hpp"

#include <array>
#include <catch2/catch.hpp>

namespace {

struct Reading {
    explicit Reading(std::string text)
        : source("a.yaml", std::move(text))
        , document(source, findings) {}
    yaml::Field root() const { return document.root(); }
    diag::Source source;
    diag::Findings findings;
    yaml::Document document;
};

std::string first(const Reading& reading) {
    return reading.findings.list().empty() ? "" : reading.findings.list().front().what;
}

} // namespace

TEST_CASE("a field knows its path and its place") {
    const Reading r("student:\n  name: Ruth\ndrills: [H1, {id: F4}]\n");
    const yaml::Field name = r.root().at("student").at("name");
    CHECK(name.path() == "student.name");
    CHECK(name.span().line == 2);
    CHECK(name.span().column == 9);
    CHECK(name.span().length == 4);
    CHECK(r.root().at("drills").items().at(1).at("id").path() == "drills[2].id");
    CHECK(r.findings.total() == 0);
}

TEST_CASE("a missing key is told at its parent's place") {
    const Reading r("date: 2026-05-14\nstudent: {name: Ruth}\n");
    CHECK_FALSE(r.root().at("student").required("hand", "right"));
    REQUIRE(r.findings.total() == 1);
    CHECK(r.findings.list()[0].span.line == 2);
    CHECK(r.findings.list()[0].span.column == 1);
}

TEST_CASE("numbers are finite, have a point and may wear a degree sign") {
    const Reading r(
        "a: 62.5\nb: 34°\nc: .inf\nd: 1e999\ne: '1,5'\nf: nan\ng: 0x10\nh: +3\ni: 7 degrees\n");
    CHECK(r.root().at("a").number() == 62.5);
    CHECK(r.root().at("b").number() == 34.0);
    CHECK(r.root().at("h").number() == 3.0);
    CHECK(r.root().at("i").number() == 7.0);
    for (const char* key : {"c", "d", "e", "f", "g"})
        CHECK_FALSE(r.root().at(key).number());
    CHECK(r.findings.errors() == 5);
}

TEST_CASE("yes and no stay words until they are asked for") {
    const Reading r("a: no\nb: Yes\nc: off\n");
    CHECK(r.root().at("a").text() == "no");
    CHECK(r.root().at("a").yes_no() == false);
    CHECK(r.root().at("b").yes_no() == true);
    CHECK_FALSE(r.root().at("c").yes_no());
    CHECK(first(r) == "'c' must be yes or no, found 'off'");
}

TEST_CASE("a key without a value counts as left out") {
    const Reading r("a:\nb: ~\nc: ''\n");
    CHECK_FALSE(r.root().at("a"));
    CHECK_FALSE(r.root().at("b"));
    CHECK_FALSE(r.root().at("c").text());
    CHECK(r.findings.total() == 0);
}

TEST_CASE("underscores and hyphens in keys count like spaces") {
    const Reading r("thumb_side: a\nheel-pad: b\n");
    CHECK(r.root().at("thumb side").text() == "a");
    CHECK(r.root().at("heel pad").text() == "b");
}

TEST_CASE("words are found whatever their capitals") {
    const Reading r("a: Trail_Side\n");
    constexpr std::array<std::string_view, 2> words{"lead side", "trail side"};
    CHECK(r.root().at("a").one_of(words) == 1);
}

TEST_CASE("hostile documents end in one bounded finding") {
    std::string bomb = "a: &a [x, x]\n";
    for (char c = 'b'; c < 'z'; ++c)
        bomb += std::string(1, c) + ": &" + c + " [*" + static_cast<char>(c - 1) + ", *" +
                static_cast<char>(c - 1) + "]\n";
    std::string many;
    for (int i = 0; i < 30000; ++i)
        many += "- x\n";
    std::string dashes, maps = "a: ";
    for (int i = 0; i < 10000; ++i)
        dashes += "- ";
    for (int i = 0; i < 10000; ++i)
        maps += "{a: ";
    for (const std::string& text :
         {bomb, many, dashes + "x", maps, std::string(10000, '['), std::string(10000, '{'),
          std::string(2'000'000, 'x'), std::string("a: \0b", 5), std::string("a: \xFF")}) {
        const Reading r(text);
        CHECK_FALSE(r.document.readable());
        CHECK(r.findings.errors() == 1);
        CHECK(diag::print_all(r.findings).size() < 1500);
    }
}

TEST_CASE("what only looks like a text cut at its '#' is none") {
    for (const std::string text : {
             "a: one # two\n",
             "a: one ## two\n",
             "a: one #\n",
             "a: https://low-meadow.example/#2\n",
             "a: 'one' #two\n",
             "a: {b: 1} #two\n",
             "a: #two\n  b: 1\n",
             "a: #two\n- b\n",
             "#a: 1\nb: 2\n",
             "a:\n  #two\n  b: 1\n",
             "a: \"one\n  two #3\"\nb: 'it''s #4'\n",
             "a: |\n  one #2\n\n  three #4\nb: 1\n",
             "- >-\n  one #2\n- two\n",
             "a: Ruth's and\n  'tis #\nb: Tom's \"own\" # two\n",
             "a: [one, 'two #3',\n  \"four #5\"]\n",
         }) {
        INFO(text);
        CHECK(Reading(text).findings.total() == 0);
    }
}

TEST_CASE("a text that would be cut at its '#' is told once, and read on") {
    const Reading begins("a: #14532d\nb: [#one, {c: #2}]\n");
    CHECK(begins.findings.total() == 3);
    CHECK(begins.root().at("a").text() == "#14532d");
    CHECK(begins.root().at("b").items().at(1).at("c").text() == "#2");
    const Reading follows("a: one #2\nb: {c: 1 #2, d: 3}\n");
    CHECK(follows.findings.total() == 2);
    CHECK(follows.root().at("a").text() == "one");
    CHECK(follows.root().at("b").at("c").number() == 1.0);
    CHECK(follows.root().at("b").at("d").number() == 3.0);
}

TEST_CASE("a needed key is not told as missing where it is misspelt") {
    const Reading r("nmae: Ruth\n");
    r.root().only({"name", "hand"});
    r.root().required("name", "Ruth");
    CHECK(r.findings.total() == 1);
    r.root().required("hand", "right");
    CHECK(r.findings.total() == 2);
}
