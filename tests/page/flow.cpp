#include "page/flow.hpp"
#include "page/self_check.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

namespace {

using page::Block;
using page::Section;

const theme::Theme a4 = theme::house_style(theme::Paper::a4, false);

ink::Drawing line(double height, const std::string& words) {
    ink::Drawing d;
    d.size = {100, height};
    d.add(
        text::EvenTypesetter().line(words, a4.setting(theme::Text::body).style, {0, height * 0.7}));
    return d;
}

std::string numbered(std::string name, std::size_t i) {
    name += std::to_string(i);
    return name;
}

Block block(const std::string& name, std::size_t pieces, double height) {
    Block b{.name = name};
    for (std::size_t i = 0; i < pieces; ++i)
        b.pieces.push_back({line(height, numbered(name, i))});
    return b;
}

page::Flowed flowed(std::vector<Block> blocks, bool right_hand = false) {
    Section section{.name = "s", .title = "S", .right_hand = right_hand};
    section.blocks = std::move(blocks);
    return page::flow({section}, a4, [](auto&, auto, auto) {});
}

/// Words of a sheet in their order.
std::vector<std::string> words(const page::Sheet& sheet) {
    std::vector<std::string> out;
    for (const auto& mark : sheet.marks)
        if (const auto* w = std::get_if<ink::Words>(&mark)) out.push_back(w->text);
    return out;
}

} // namespace

TEST_CASE("every piece is placed once, in order, whatever the number of pages") {
    for (const std::size_t n : {1u, 7u, 60u, 300u}) {
        const auto out = flowed({block("p", n, 15)});
        std::vector<std::string> all;
        for (const auto& sheet : out.book.sheets)
            for (auto& w : words(sheet))
                all.push_back(w);
        REQUIRE(all.size() == n);
        for (std::size_t i = 0; i < n; ++i)
            CHECK(all[i] == numbered("p", i));
        CHECK(out.faults.empty());
        CHECK(out.book.sheets.size() % 2 == 0);
    }
}

TEST_CASE("a heading moves to the next page with what follows it") {
    const double room = a4.live(true).height;
    Block heading = block("h", 1, 20);
    heading.keep_with_next = true;
    const auto out = flowed({block("a", 1, room - 30), heading, block("b", 1, 30)});
    CHECK(words(out.book.sheets[0]) == std::vector<std::string>{"a0"});
    CHECK(words(out.book.sheets[1]) == std::vector<std::string>{"h0", "b0"});
}

TEST_CASE("a table repeats its head on every page it goes on to") {
    Block table = block("r", 100, 15);
    table.head = line(18, "head");
    const auto out = flowed({table});
    REQUIRE(out.book.sheets.size() >= 2);
    for (const auto& sheet : out.book.sheets)
        if (!words(sheet).empty()) CHECK(words(sheet).front() == "head");
}

TEST_CASE("pieces that keep together stand on one page") {
    const double room = a4.live(true).height;
    Block pair = block("k", 2, 20);
    pair.pieces[0].keeps_next = true;
    const auto out = flowed({block("a", 1, room - 30), pair});
    CHECK(words(out.book.sheets[1]) == std::vector<std::string>{"k0", "k1"});
}

TEST_CASE("a piece taller than a page is placed all the same, and told") {
    const auto out = flowed({block("tall", 1, 5000), block("next", 1, 20)});
    REQUIRE(out.faults.size() == 1);
    CHECK(out.faults[0].block == "tall");
    CHECK(words(out.book.sheets[1]) == std::vector<std::string>{"next0"});
}

TEST_CASE("a right-hand section starts on an odd page") {
    Section one{.name = "one", .title = "One"},
        two{.name = "two", .title = "Two", .right_hand = true};
    one.blocks = {block("a", 1, 20)};
    two.blocks = {block("b", 1, 20)};
    const auto out = page::flow({one, two}, a4, [](auto&, auto, auto) {});
    CHECK(words(out.book.sheets[2]) == std::vector<std::string>{"b0"});
    CHECK(out.book.bookmarks[1].sheet == 2);
    CHECK(out.book.sheets.size() == 4);
}

TEST_CASE("the self-check tells text over text, outside the content, too small, and nothing else") {
    const text::EvenTypesetter type;
    const auto live = a4.live(true);
    const auto style = a4.setting(theme::Text::body).style;
    page::Book book;
    book.sheets.push_back({a4.page(), {}, "1"});
    auto& marks = book.sheets[0].marks;
    marks.push_back(type.line("quiet", style, {live.x, live.y + 100}));
    CHECK(page::self_check(book, a4, type).empty());
    SECTION("over") {
        marks.push_back(type.line("over", style, {live.x + 5, live.y + 103}));
        CHECK(page::self_check(book, a4, type).size() == 1);
    }
    SECTION("outside, in the binding margin") {
        marks.push_back(type.line("margin", style, {live.x - 20, live.y + 200}));
        CHECK(page::self_check(book, a4, type).size() == 1);
    }
    SECTION("too small") {
        auto small = style;
        small.size = a4.smallest - 1;
        marks.push_back(type.line("small", small, {live.x, live.y + 200}));
        CHECK(page::self_check(book, a4, type).size() == 1);
    }
}
