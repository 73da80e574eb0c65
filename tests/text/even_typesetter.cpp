#include "text/typesetter.hpp"
#include <catch2/catch.hpp>

namespace {

ink::Style ten_points() {
    ink::Style style;
    style.size = 10;
    return style;
}

std::vector<std::string> texts(const text::Lines& lines) {
    std::vector<std::string> out;
    for (const auto& line : lines.lines)
        out.push_back(line.text);
    return out;
}

using Texts = std::vector<std::string>;

} // namespace

TEST_CASE("each letter of the toy is half an em, whatever its bytes") {
    const text::EvenTypesetter setter;
    CHECK(setter.line("abcd", ten_points()).width == Approx(20));
    CHECK(setter.line("äéőЖ", ten_points()).width == Approx(20));
    CHECK(setter.line("a\u00ADb", ten_points()).width == Approx(10));
    auto tracked = ten_points();
    tracked.tracking = 1;
    CHECK(setter.line("abcd", tracked).width == Approx(23));
}

TEST_CASE("the toy breaks at spaces, at newlines and inside words that are too long") {
    const text::EvenTypesetter setter;
    CHECK(texts(setter.set("aa bb cc", ten_points(), 25, 12)) == Texts{"aa bb", "cc"});
    CHECK(texts(setter.set("aa\nbb", ten_points(), 100, 12)) == Texts{"aa", "bb"});
    CHECK(texts(setter.set("aaaaaaa b", ten_points(), 15, 12)) == Texts{"aaa", "aaa", "a b"});
    CHECK(texts(setter.set("abc", ten_points(), 1, 12)) == Texts{"a", "b", "c"});
    CHECK(texts(setter.set("", ten_points(), 50, 12)) == Texts{""});
}

TEST_CASE("the toy aligns and stacks lines by the leading") {
    const text::EvenTypesetter setter;
    const auto lines = setter.set("aa b", ten_points(), 14, 12, text::Align::right);
    REQUIRE(lines.lines.size() == 2);
    CHECK(lines.lines[0].at.x == Approx(4));
    CHECK(lines.lines[1].at.x == Approx(9));
    CHECK(lines.lines[1].at.y - lines.lines[0].at.y == Approx(12));
    CHECK(lines.height == Approx(24));
    CHECK(lines.width == Approx(10));
}
