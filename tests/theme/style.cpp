#include "theme/colour.hpp"
#include "theme/read_style.hpp"

#include <catch2/catch.hpp>

#include <fstream>
#include <iterator>
#include <list>

namespace {

using Catch::Matchers::Contains;

/// Keeps what findings point into.
struct Reading {
    std::list<diag::Source> sources;
    diag::Findings findings;
    theme::Style style = theme::house();

    using Reader = void (*)(const diag::Source&, theme::Style&, diag::Findings&);
    Reading& of(Reader reader, std::string text) {
        reader(sources.emplace_back("style.yaml", std::move(text)), style, findings);
        return *this;
    }
    std::string told() const { return diag::print_all(findings); }
};

std::string built_in(const char* name) {
    std::ifstream in(std::string(SOURCE_DIR "/templates/style/") + name, std::ios::binary);
    REQUIRE(in);
    return {std::istreambuf_iterator<char>(in), {}};
}

std::vector<theme::Page> pages_of(const theme::Style& style) {
    std::vector<theme::Page> out;
    for (const auto& planned : style.pages)
        out.push_back(planned.page);
    return out;
}

} // namespace

TEST_CASE("the built-in style files say what the program does without them") {
    Reading r;
    r.style.letters = {}, r.style.papers = {}, r.style.pages.clear(), r.style.accent = {};
    r.of(theme::read_letters, built_in("letters.yaml"))
        .of(theme::read_papers, built_in("papers.yaml"))
        .of(theme::read_inks, built_in("inks.yaml"))
        .of(theme::read_pages, built_in("pages.yaml"));
    CHECK(r.told() == "");
    const theme::Style house = theme::house();
    for (std::size_t i = 0; i < theme::text_count; ++i) {
        INFO("letters, row " << i + 1);
        auto expected = house.letters[i];
        expected.coach = false; // whose letter it is stands in no file
        CHECK(r.style.letters[i] == expected);
    }
    CHECK(r.style.papers == house.papers);
    CHECK(r.style.gutter == house.gutter);
    CHECK(r.style.punch == house.punch);
    CHECK(r.style.accent == house.accent);
    CHECK(pages_of(r.style) == pages_of(house));
}

TEST_CASE("a style file may hold one line, the rest stays") {
    Reading r;
    r.of(theme::read_letters, "body: {size: 12, leading: 16.5}\n");
    CHECK(r.told() == "");
    const auto t = theme::theme_of(r.style, theme::Paper::a4, false);
    CHECK(t.setting(theme::Text::body).style.size == 12);
    CHECK(t.setting(theme::Text::body).leading == 16.5);
    CHECK(t.setting(theme::Text::title).style.size == 23);
}

TEST_CASE("what a style may not do is told with its place") {
    Reading r;
    r.of(theme::read_letters, "small: {size: 7}\nbdy: {size: 12}\ncue: {size: 17, leading: 12}\n");
    CHECK_THAT(r.told(), Contains("style.yaml:1:15: error: 'size' must be from 8.5 to 72"));
    CHECK_THAT(r.told(), Contains("style.yaml:2:1: error: this file has no key 'bdy'") &&
                             Contains("did you mean 'body'?"));
    CHECK_THAT(r.told(), Contains("style.yaml:3:1") && Contains("stand closer"));
    Reading paper;
    paper.of(theme::read_papers, "A4: {binding: 10}\npunch marks: five\n");
    CHECK_THAT(paper.told(), Contains("style.yaml:1:15") && Contains("from 18 to 50"));
    CHECK_THAT(paper.told(), Contains("style.yaml:2:14") && Contains("two holes"));
}

TEST_CASE("a plan leaves pages out, moves them and adds a coach's own") {
    Reading r;
    r.of(theme::read_pages, "- {title: Welcome, text: [Good to see you.], lines: yes}\n"
                            "- one thing\n- why\n- evidence\n- drill\n- expect\n");
    CHECK(r.told() == "");
    using theme::Page;
    CHECK(pages_of(r.style) == std::vector{Page::own, Page::one_thing, Page::why, Page::evidence,
                                           Page::drill, Page::expect});
    CHECK(r.style.pages[0].title == "Welcome");
    CHECK(r.style.pages[0].text == std::vector<std::string>{"Good to see you."});
    CHECK(r.style.pages[0].lines);
}

TEST_CASE("a plan keeps the cautions, and every page once") {
    Reading r;
    r.of(theme::read_pages, "- one thing\n- hold\n- hold\n- drill\n- wy\n");
    CHECK_THAT(r.told(), Contains("the page 'expect' is missing") && Contains("the cautions"));
    CHECK_THAT(r.told(), Contains("style.yaml:3:3: error: the page 'hold' is there twice"));
    CHECK_THAT(r.told(), Contains("style.yaml:5:3") && Contains("did you mean 'why'?"));
    CHECK(pages_of(r.style) == pages_of(theme::house())); // a wrong plan is not used in part
    Reading order;
    order.of(theme::read_pages, "- one thing\n- second drill\n- drill\n- expect\n");
    CHECK_THAT(order.told(), Contains("style.yaml:2:3: error: the second drill comes before"));
    Reading empty;
    empty.of(theme::read_pages, "- one thing\n- drill\n- expect\n- {title: Mine}\n");
    CHECK_THAT(empty.told(), Contains("this page is empty"));
}

TEST_CASE("an accent that does not carry text is darkened until it does, and told") {
    for (const char* light : {"#FFD400", "#fff", "#00ff00", "#8ecae6", "#ff69b4"}) {
        Reading r;
        r.of(theme::read_inks, std::string("accent: \"") + light + "\"\n");
        CHECK_THAT(r.told(), Contains("style.yaml:1:9: warning: the accent"));
        // 4.5 to 1: WCAG 2.2, success criterion 1.4.3
        CHECK(theme::contrast(r.style.accent, ink::white) >= 4.5);
        CHECK(theme::contrast(r.style.accent, ink::white) < 5.2); // no darker than needed
        Reading again;
        again.of(theme::read_inks, "accent: \"" + theme::text_of(r.style.accent) + "\"\n");
        CHECK(again.told() == ""); // the colour told is one that is taken
        CHECK(again.style.accent == r.style.accent);
    }
    Reading wrong;
    wrong.of(theme::read_inks, "accent: green\n");
    CHECK_THAT(wrong.told(), Contains("style.yaml:1:9: error: 'accent' must be a colour"));
}

TEST_CASE("colours are read in both lengths") {
    CHECK(theme::colour_of("#05c") == theme::colour_of("#0055cc"));
    CHECK(theme::colour_of("#00000g") == std::nullopt);
    CHECK(theme::colour_of("005c99") == std::nullopt);
    CHECK(theme::text_of(*theme::colour_of("#005C99")) == "#005c99");
}
