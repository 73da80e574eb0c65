// What every drill of the stock library keeps to, in every language.
#include "stock.hpp"

#include <map>
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

TEST_CASE("every translation says every line and every step of every drill") {
    const auto english = stock::drills_of("en");
    auto silent = english; // so that no English line can stand in for one left out
    for (auto& d : silent) {
        for (auto* line : {&d.name, &d.purpose, &d.need, &d.dose, &d.check, &d.good_enough, &d.pass,
                           &d.cue, &d.repair, &d.caution, &d.place, &d.blend, &d.play})
            line->clear();
        d.steps.clear();
        d.junior_steps.clear();
    }
    CHECK(stock::languages() == std::vector<std::string>{"de", "en", "es", "fr", "sv"});
    for (const auto& language : stock::languages()) {
        if (language == "en") continue;
        diag::Findings findings;
        auto said = silent;
        for (const auto* source : stock::files_of(language))
            said = drills::reworded(std::move(said), *source, findings);
        stock::expect_none(findings);
        REQUIRE(said.size() == english.size());
        for (std::size_t i = 0; i < said.size(); ++i) {
            const Drill &own = said[i], &like = english[i];
            CAPTURE(language, own.id);
            CHECK(own.steps.size() == like.steps.size());
            CHECK(own.junior_steps.size() == like.junior_steps.size());
            const auto a = lines_of(own), b = lines_of(like);
            REQUIRE(a.size() == b.size());
            for (std::size_t line = 0; line < a.size(); ++line) {
                CAPTURE(a[line], b[line]);
                CHECK(a[line].empty() == b[line].empty());
                CHECK(std::ranges::count(a[line], '{') == std::ranges::count(b[line], '{'));
                if (words(b[line]) > 2) CHECK(a[line] != b[line]);
            }
        }
    }
}

TEST_CASE("no translated drill claims too much, names a side, or uses a typewriter's marks") {
    const std::map<std::string, std::string> banned{
        {"de", "verbesser|bewiesen|perfekt|signifikant|konstant|slice|hook|(gut|schlecht)er? schl|"
               "(linke|rechte)[nrms]? (hand|daumen|fuß|zeigefinger)"},
        {"fr", "amélior|prouvé|parfait|significati|régulier|slice|hook|(bon|mauvais) coup|"
               "(main|pied|pouce|index|épaule) (gauche|droite?)"},
        {"es", "mejorad|comprobad|perfect|significativ|consistente|slice|hook|(buen|mal) golpe|"
               "(mano|pie|pulgar|índice|hombro) (izquierd|derech)"},
        {"sv", "förbättr|bevisa|perfekt|signifikant|konsekvent|slice|hook|(bra|dåligt) slag|"
               "(vänstra|högra) (hand|tumme|fot|pekfing)"},
    };
    for (const auto& [language, pattern] : banned)
        for (const auto& d : stock::drills_of(language))
            for (const auto& line : lines_of(d)) {
                CAPTURE(language, d.id, line);
                CHECK_FALSE(std::regex_search(line, std::regex(pattern, std::regex::icase)));
                CHECK(line.find_first_of("'\"`") == std::string::npos);
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

TEST_CASE("every pass mark that a drill prints is the one its log counts by") {
    const std::regex of("(\\d+) of (\\d+)"), days("on (\\d+) different days");
    for (const auto& d : stock::drills_of("en")) {
        CAPTURE(d.id, d.pass);
        std::smatch found;
        if (std::regex_search(d.pass, found, of)) {
            CHECK(d.count.pass == std::stoi(found[1]));
            CHECK(d.count.tries == std::stoi(found[2]));
        } else {
            CHECK(d.count.pass == 0);
        }
        CHECK(d.count.days == (std::regex_search(d.pass, found, days) ? std::stoi(found[1]) : 1));
        CHECK((d.pass.find("right first") != std::string::npos) ==
              (d.count.of == drills::Count::Of::right_first));
    }
}

TEST_CASE("easier drills lead down and end") {
    const auto all = stock::drills_of("en");
    for (const auto& d : all) {
        CAPTURE(d.id);
        const auto* at = &d;
        int steps = 0;
        while (!at->easier.empty() && ++steps < 10) {
            at = drills::find(all, at->easier);
            REQUIRE(at);
        }
        CHECK(steps < 10);
    }
}
