// What every drill of the stock library keeps to, in every language.
#include "stock.hpp"

#include <regex>
#include <set>
#include <sstream>

using drills::Drill;

namespace {

std::vector<std::string> lines_of(const Drill& d) {
    std::vector<std::string> all{d.name,        d.purpose, d.need, d.dose,   d.check,
                                 d.good_enough, d.pass,    d.cue,  d.repair, d.caution,
                                 d.place,       d.blend,   d.play};
    all.insert(all.end(), d.steps.begin(), d.steps.end());
    all.insert(all.end(), d.junior_steps.begin(), d.junior_steps.end());
    return all;
}

std::size_t words(const std::string& text) {
    std::istringstream in(text);
    return static_cast<std::size_t>(std::distance(std::istream_iterator<std::string>(in), {}));
}

} // namespace

TEST_CASE("the library has its thirty drills") {
    const auto all = stock::drills_of("en");
    std::string ids;
    for (const auto& family : {"H1 H2 H3 H4 H5 H6 H7 H8", "F1 F2 F3 F4 F5 F6", "P1 P2 P3 P4",
                               "L1 L2 L3", "S1 S2 S3 S4 S5", "V1 V2", "A1 T1"}) {
        std::istringstream in(family);
        for (std::string id; in >> id;) {
            CAPTURE(id);
            CHECK(drills::find(all, id) != nullptr);
        }
    }
    CHECK(all.size() == 30);
}

TEST_CASE("every drill has all that its page prints") {
    for (const auto& language : stock::languages())
        for (const auto& d : stock::drills_of(language)) {
            CAPTURE(language, d.id);
            for (const auto* text :
                 {&d.name, &d.purpose, &d.need, &d.dose, &d.check, &d.good_enough, &d.pass,
                  &d.repair, &d.place, &d.blend, &d.play})
                CHECK_FALSE(text->empty());
            CHECK(d.steps.size() >= 2);
            CHECK(d.steps.size() <= 6);
            CHECK(d.junior_steps.size() == 3);
            CHECK_FALSE(d.serves.empty());
            if (d.id != "T1") CHECK_FALSE(d.cue.empty());
            CHECK(d.check.back() == '?');
            for (const auto& step : d.steps)
                CHECK(words(step) <= 15);
            for (const auto& step : d.junior_steps)
                CHECK(words(step) <= 10);
        }
}

TEST_CASE("a drill serves both hands with one text") {
    const std::regex side("\\b(left|right) (hand|thumb|foot|forefinger|side|palm|eye|shoulder)");
    for (const auto& d : stock::drills_of("en"))
        for (const auto& line : lines_of(d)) {
            CAPTURE(d.id, line);
            CHECK_FALSE(std::regex_search(line, side));
        }
}

TEST_CASE("no drill claims too much or blames") {
    const std::regex banned(
        "\\b(improv\\w*|proven|fixe?[sd]|perfect\\w*|significant\\w*|consistent\\w*|average golfer|"
        "(good|bad|poor) shots?|fade|slice|hook|draw shot|mistake|wrong)\\b",
        std::regex::icase);
    for (const auto& d : stock::drills_of("en"))
        for (const auto& line : lines_of(d)) {
            CAPTURE(d.id, line);
            CHECK_FALSE(std::regex_search(line, banned));
        }
}

TEST_CASE("English drills avoid words that are spelt differently across the ocean") {
    const std::regex regional(
        "colour|color|cent(re|er)|met(re|er)s?\\b|gr[ea]y|practi[sc]e|favou?r", std::regex::icase);
    for (const auto& d : stock::drills_of("en"))
        for (const auto& line : lines_of(d)) {
            CAPTURE(d.id, line);
            CHECK_FALSE(std::regex_search(line, regional));
        }
}

TEST_CASE("drills with a swing say to take care or need a range") {
    for (const auto& d : stock::drills_of("en"))
        if (d.space == drills::Space::swing) {
            CAPTURE(d.id);
            CHECK((d.caution.size() > 0 || d.space == drills::Space::range));
        }
}

TEST_CASE("every language tells the same drills in the same form") {
    const auto english = stock::drills_of("en");
    for (const auto& language : stock::languages()) {
        const auto other = stock::drills_of(language);
        CHECK(other.size() == english.size());
        for (const auto& d : english) {
            CAPTURE(language, d.id);
            const auto* same = drills::find(other, d.id);
            REQUIRE(same != nullptr);
            CHECK(same->family == d.family);
            CHECK(same->space == d.space);
            CHECK(same->minutes == d.minutes);
            CHECK(same->picture == d.picture);
            CHECK(same->serves == d.serves);
            CHECK(same->steps.size() == d.steps.size());
            CHECK(same->caution.empty() == d.caution.empty());
            CHECK(same->cue.empty() == d.cue.empty());
        }
    }
}

TEST_CASE("the typical bag runs from the least loft to the most") {
    const diag::Source source("typical.yaml",
                              stock::read_file(SOURCE_DIR "/templates/clubs/typical.yaml"));
    diag::Findings findings;
    const auto clubs = drills::read_clubs(source, findings);
    CHECK(findings.list().empty());
    REQUIRE(clubs.size() == 13);
    CHECK(clubs.front().key == "driver");
    CHECK(clubs.back().key == "lob-wedge");
    CHECK(clubs[6].key == "seven-iron");
    CHECK(clubs[6].head.value == Approx(0.270));
    for (std::size_t i = 1; i < clubs.size(); ++i)
        CHECK(clubs[i].loft > clubs[i - 1].loft);
    const auto english = stock::read_file(SOURCE_DIR "/templates/words/en-GB/clubs.txt");
    for (const auto& club : clubs) {
        CAPTURE(club.key);
        CHECK(english.find("\nclub." + club.key + " = ") != std::string::npos);
        CHECK(english.find("\nclub.a." + club.key + " = ") != std::string::npos);
    }
}
