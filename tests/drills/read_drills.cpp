#include "drills/clubs.hpp"
#include "drills/drill.hpp"

#include <catch2/catch.hpp>

namespace {

const std::string sound = R"(- id: X1
  family: hold
  name: My own
  purpose: It does one thing.
  need: Club
  space: swing
  steps: [Take hold., Look down.]
  dose: 5 times
  check: Is it so?
)";

struct Read {
    explicit Read(std::string text)
        : source("drills.yaml", std::move(text)) {
        drills = drills::read_drills(source, findings);
    }
    std::string faults() const {
        std::string out;
        for (const auto& f : findings.list())
            out += std::to_string(f.span.line) + " " + f.what + "\n";
        return out;
    }
    diag::Source source;
    diag::Findings findings;
    std::vector<drills::Drill> drills;
};

} // namespace

TEST_CASE("a coach's drill needs only what a student cannot do without") {
    const Read r(sound);
    CHECK(r.faults().empty());
    REQUIRE(r.drills.size() == 1);
    CHECK(r.drills[0].id == "X1");
    CHECK(r.drills[0].space == drills::Space::swing);
    CHECK(r.drills[0].minutes == 5);
    CHECK(r.drills[0].steps == std::vector<std::string>{"Take hold.", "Look down."});
    CHECK(r.drills[0].span.line == 1);
}

TEST_CASE("every fault of a drill file is told in one run") {
    const Read r("- id: X1\n"
                 "  family: hands\n"
                 "  naem: My own\n"
                 "  purpose: It does one thing.\n"
                 "  need: Club\n"
                 "  space: swing\n"
                 "  steps: [a, b, c, d, e, f, g]\n"
                 "  minutes: 0\n"
                 "  dose: 5 times\n"
                 "  check: " +
                 std::string(91, 'x') + "\n");
    const auto faults = r.faults();
    CAPTURE(faults);
    CHECK(faults.find("'family'") != std::string::npos);
    CHECK(faults.find("naem") != std::string::npos);
    CHECK(faults.find("needs 'name'") == std::string::npos); // it is there, misspelt
    CHECK(faults.find("has 7 steps, at most 6 fit") != std::string::npos);
    CHECK(faults.find("'minutes'") != std::string::npos);
    CHECK(faults.find("has 91 characters, at most 90 fit") != std::string::npos);
    CHECK(r.findings.errors() == 5);
}

TEST_CASE("a long step is a warning, a drill written twice an error") {
    auto twice = sound + sound;
    twice.replace(twice.find("Look down."), 10,
                  "one two three four five six seven eight nine ten eleven twelve x y z z");
    const Read r(twice);
    CHECK(r.findings.errors() == 1);
    CHECK(r.faults().find("more than 15 words") != std::string::npos);
    CHECK(r.faults().find("10 the drill 'X1' is there twice") != std::string::npos);
    CHECK(r.drills.size() == 1);
}

TEST_CASE("a coach's drill takes the place of the built-in one of that id, others are added") {
    std::vector<drills::Drill> library(2), own(2);
    library[0].id = std::string("H1");
    library[1].id = std::string("H2");
    own[0].id = std::string("H2");
    own[0].name = std::string("mine");
    own[1].id = std::string("Z9");
    diag::Findings findings;
    const auto all = drills::merged(library, own, findings);
    CHECK(findings.clean());
    REQUIRE(all.size() == 3);
    CHECK(drills::find(all, "H2")->name == "mine");
    CHECK(drills::find(all, "Z9") != nullptr);
    CHECK(drills::find(all, "h2") == nullptr);
}

TEST_CASE("a club out of range or written twice is an error") {
    const diag::Source source("clubs.yaml", "- {club: a, loft: 131, lie: 62, head grams: 270}\n"
                                            "- {club: b, loft: 31, lie: 62, head grams: 270}\n"
                                            "- {club: b, loft: 32, lie: 62}\n");
    diag::Findings findings;
    const auto clubs = drills::read_clubs(source, findings);
    CHECK(findings.errors() == 3);
    CHECK(clubs.size() == 2);
}

TEST_CASE("a drill that takes another's place keeps a caution") {
    std::vector<drills::Drill> library(1), own(1);
    library[0].id = own[0].id = std::string("V1");
    library[0].caution = std::string("Space all round.");
    diag::Findings findings;
    drills::merged(library, own, findings);
    REQUIRE(findings.errors() == 1);
    CHECK(findings.list().front().hint.find("Space all round.") != std::string::npos);
    own[0].caution = std::string("Nobody near.");
    diag::Findings none;
    drills::merged(library, own, none);
    CHECK(none.clean());
}

TEST_CASE("an easier drill is another one that is there") {
    std::vector<drills::Drill> all(2);
    all[0].id = std::string("A"), all[1].id = std::string("B");
    all[0].easier = std::string("B");
    diag::Findings none;
    drills::check_easier(all, none);
    CHECK(none.clean());
    all[0].easier = std::string("A"), all[1].easier = std::string("C");
    diag::Findings two;
    drills::check_easier(all, two);
    CHECK(two.errors() == 2);
}

TEST_CASE("a count is read, and cannot ask for more than its tries") {
    std::string text = sound;
    text += "  count: {tries: 8, pass: 6, days: 3, calls: 8, of: right first}\n";
    const Read good(text);
    REQUIRE(good.findings.clean());
    const auto& count = good.drills.front().count;
    CHECK(count.tries == 8);
    CHECK(count.pass == 6);
    CHECK(count.days == 3);
    CHECK(count.calls == 8);
    CHECK(count.of == drills::Count::Of::right_first);
    text = sound;
    text += "  count: {tries: 5, pass: 6}\n";
    const Read bad(text);
    CHECK(bad.findings.errors() == 1);
    CHECK(bad.faults().find("more than its 5 tries") != std::string::npos);
}
