#include "words/catalogue.hpp"

#include <catch2/catch.hpp>
#include <stdexcept>

using words::Catalogue;
using words::Voice;

namespace {

/// A catalogue from one text; findings are printed without colour.
struct Loaded {
    explicit Loaded(std::string text)
        : source("words.txt", std::move(text)) {
        catalogue.add(source, findings);
    }
    std::string faults() const {
        std::string out;
        for (const auto& finding : findings.list())
            out += std::to_string(finding.span.line) + ":" + std::to_string(finding.span.column) +
                   " " + finding.what + "\n";
        return out;
    }
    void replace(std::string text) {
        other = std::make_unique<diag::Source>("house.txt", std::move(text));
        catalogue.replace(*other, findings);
    }
    std::string say(std::string_view key, const words::Holes& holes = {}) const {
        return catalogue.say({}, key, holes);
    }
    diag::Source source;
    std::unique_ptr<diag::Source> other;
    diag::Findings findings;
    Catalogue catalogue{"en-GB"};
};

const Voice right_hander{unit::Hand::right, false, {}};
const Voice left_hander{unit::Hand::left, false, {}};
const Voice junior{unit::Hand::right, true, {}};

} // namespace

TEST_CASE("a sentence may run over indented lines, with comments between") {
    const Loaded l(
        "\xEF\xBB\xBF# words\nhead.a = one\r\n\n  two\n# aside\n\tthree\nhead.b = four = five\n");
    CHECK(l.faults().empty());
    CHECK(l.say("head.a") == "one two three");
    CHECK(l.say("head.b") == "four = five");
}

TEST_CASE("hand and age fill themselves") {
    const Loaded l("a = your {hand, select, right {left} other {right}} hand\n"
                   "b = {age, select, junior {Nice} other {Good}} {hand}");
    CHECK(l.catalogue.say(right_hander, "a") == "your left hand");
    CHECK(l.catalogue.say(left_hander, "a") == "your right hand");
    CHECK(l.catalogue.say(junior, "b") == "Nice right");
    CHECK(l.catalogue.say(left_hander, "b") == "Good left");
    CHECK(l.catalogue.holes("b").empty());
}

TEST_CASE("plurals count whole and broken numbers, and # is the number") {
    const Loaded l("a = {n, plural, =0 {none} one {# shot} other {# shots}} of {of}");
    CHECK(l.say("a", {{"n", 0}, {"of", 1}}) == "none of 1");
    CHECK(l.say("a", {{"n", 1}, {"of", 10}}) == "1 shot of 10");
    CHECK(l.say("a", {{"n", std::size_t{1200}}, {"of", "many"}}) == "1,200 shots of many");
    CHECK(l.say("a", {{"n", 2.5}, {"of", 0.125}}) == "2.5 shots of 0.125");
    CHECK(l.catalogue.holes("a") == std::vector<std::string>{"n", "of"});
}

TEST_CASE("# is the number only directly inside its plural, as in ICU") {
    const Loaded l("a = {n, plural, one {one} other {{who, select, a {# A} other {# others}}}}");
    CHECK(l.say("a", {{"n", 3}, {"who", "a"}}) == "# A");
    CHECK(l.say("a", {{"n", 3}, {"who", "b"}}) == "# others");
}

TEST_CASE("quoted braces are text") {
    const Loaded l("a = it''s '{x}' {x}");
    CHECK(l.say("a", {{"x", 1}}) == "it's {x} 1");
}

TEST_CASE("an unknown key, an unfilled hole and a counted text are faults of the program") {
    const Loaded l("a = {x}\nb = {n, plural, one {1} other {#}}");
    CHECK_THROWS_AS(l.say("c"), std::logic_error);
    CHECK_THROWS_AS(l.say("a"), std::logic_error);
    CHECK_THROWS_AS(l.say("b", {{"n", "two"}}), std::logic_error);
}

TEST_CASE("faults of a wording file are told all at once, with their places") {
    const Loaded l("  stray\n"
                   "no equals sign\n"
                   "Key = capitals\n"
                   "a = {open\n"
                   "b = fine\n"
                   "b = again\n"
                   "c = {n, number}\n"
                   "d = words before\n"
                   "    {n, plural, one {1}}\n"
                   "e = {n, plural, offset:1 one {1} other {#}}\n");
    CHECK(l.faults() == "1:1 an indented line continues no sentence\n"
                        "2:1 expected 'key = sentence'\n"
                        "3:1 expected 'key = sentence'\n"
                        "4:5 a brace is not closed in 'a'\n"
                        "6:1 the key 'b' is there twice\n"
                        "7:5 the hole 'n' asks for a form of its own in 'c'\n"
                        "8:5 a choice has no 'other' case in 'd'\n"
                        "10:24 plural has an offset in 'e'\n");
    CHECK(l.say("b") == "fine");
}

TEST_CASE("a house's own wording replaces sentences that exist, with holes that exist") {
    Loaded l("title = {name} today\ncaution.stop = Stop on pain.\n");
    l.replace("title = For {name}, {hand, select, right {R} other {L}}\ncaution.stop = Stop at "
              "once on pain.\n");
    CHECK(l.faults().empty());
    CHECK(l.say("title", {{"name", "Mel"}}) == "For Mel, R");
    CHECK(l.say("caution.stop") == "Stop at once on pain.");
}

TEST_CASE("a replacement that could go wrong on paper is refused and changes nothing") {
    Loaded l("title = {name} today\ncaution.stop = Stop on pain.\n");
    l.replace("titel = x\ntitle = {nam}\ncaution.stop =\ntitle = {name}\n");
    CHECK(l.faults() == "1:1 no sentence has the key 'titel'\n"
                        "2:1 nothing fills the hole 'nam' in 'title'\n"
                        "3:1 the caution 'caution.stop' may be reworded, not left out\n"
                        "4:1 the key 'title' is there twice\n");
    CHECK(l.findings.list().front().hint == "did you mean 'title'?");
    CHECK(l.say("title", {{"name", "Mel"}}) == "Mel today");
    CHECK(l.say("caution.stop") == "Stop on pain.");
}

TEST_CASE("keys are listed in order") {
    const Loaded l("b = 1\na = 2\n");
    CHECK(l.catalogue.keys() == std::vector<std::string_view>{"a", "b"});
    CHECK(l.catalogue.has("a"));
    CHECK_FALSE(l.catalogue.has("c"));
}
