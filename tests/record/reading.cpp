#include "record/read_date.hpp"
#include "record/read_lesson.hpp"
#include "record/read_quantity.hpp"

#include "unit/quantity.hpp"

#include <catch2/catch.hpp>
#include <fstream>
#include <iterator>

namespace {

using unit::Measure;

struct Reading {
    explicit Reading(std::string text)
        : source("lesson.yaml", std::move(text))
        , lesson(record::read_lesson(source, findings)) {}
    diag::Source source;
    diag::Findings findings;
    record::Lesson lesson;
};

const std::string least =
    "student: {name: Ruth, hand: right}\ndate: 2026-05-14\nsaw: a\nchanged: b\n";

std::string example(const std::string& name) {
    std::ifstream in(std::string(SOURCE_DIR) + "/examples/" + name + "/lesson.yaml");
    return {std::istreambuf_iterator<char>(in), {}};
}

std::optional<record::Range> range(const std::string& text, Measure measure,
                                   unit::Units units = {}) {
    const diag::Source source("a.yaml", "want: \"" + text + "\"\n");
    diag::Findings findings;
    const yaml::Document document(source, findings);
    return record::read_range(document.root().at("want"), measure, units);
}

} // namespace

TEST_CASE("dates follow the calendar of ISO 8601") {
    // ISO 8601:2004, 3.2.1: a year divisible by four is a leap year, a century only when divisible
    // by 400.
    for (const char* day : {"2024-02-29", "2000-02-29", "2026-12-31", "2026-01-01"}) {
        REQUIRE(record::date_of(day));
        CHECK(record::iso(*record::date_of(day)) == day);
    }
    for (const char* text :
         {"2023-02-29", "1900-02-29", "2026-04-31", "2026-13-01", "2026-00-10", "2026-05-00",
          "2026-5-14", "20260514", "14-05-2026", "2026-05-14 ", "2026/05/14", "+026-05-14", ""})
        CHECK_FALSE(record::date_of(text));
}

TEST_CASE("units are what their definitions say") {
    // International yard and pound agreement, 1959: yard 0.9144 m exactly, so mile 1609.344 m,
    // inch 25.4 mm.
    CHECK(record::unit_size(unit::Kind::length, "yd") == 0.9144);
    CHECK(record::unit_size(unit::Kind::length, "ft") == 0.9144 / 3);
    CHECK(*record::unit_size(unit::Kind::speed, "mph") * 3600 == Approx(1609.344).epsilon(1e-15));
    CHECK(*record::unit_size(unit::Kind::speed, "km/h") * 3600 == Approx(1000).epsilon(1e-15));
    CHECK(record::unit_size(unit::Kind::small_length, "in") == 25.4);
    CHECK(record::unit_size(unit::Kind::length, "Yards") == 0.9144);
    CHECK_FALSE(record::unit_size(unit::Kind::speed, "yd"));
    CHECK_FALSE(record::unit_size(unit::Kind::length, "mm"));
}

TEST_CASE("a wanted range says its sides and its unit") {
    CHECK(range("2 L to 3 R", Measure::face)->least == -2);
    CHECK(range("2 L to 3 R", Measure::face)->most == 3);
    CHECK(range("2L to 3° R", Measure::face)->most == 3);
    CHECK(range("square to 3 right", Measure::face)->least == 0);
    CHECK(range("0 to 4 L", Measure::face)->least == -4);
    CHECK(range("24 to 28", Measure::loft)->most == 28);
    CHECK(range("5 down to 2 down", Measure::attack)->least == -5);
    CHECK(range("85 to 90 mph", Measure::club_speed)->least == 85 * unit::mps_in_a_mph);
    CHECK(range("140 to 150", Measure::carry, {unit::Distance::yards, {}})->most ==
          Approx(137.16).epsilon(1e-15));
    for (const char* text : {"2 to 3", "-2 to 2", "2 L", "two to three", "2 L to", "2 L to 2 L",
                             "1,5 L to 2 R", "-2 L to 2 R"})
        CHECK_FALSE(range(text, Measure::face));
    CHECK_FALSE(range("24 L to 28 R", Measure::loft));
    CHECK_FALSE(range("85 to 90 yd", Measure::club_speed));
}

TEST_CASE("the least record is a whole record") {
    const Reading r(least);
    CHECK(r.findings.total() == 0);
    CHECK(r.lesson.student.name == "Ruth");
    CHECK_FALSE(r.lesson.aim);
    CHECK_FALSE(r.lesson.shots);
    CHECK_FALSE(r.lesson.has_before);
}

TEST_CASE("the right-hand example is read field by field") {
    const Reading r(example("right-hand"));
    REQUIRE(r.findings.total() == 0);
    const record::Lesson& l = r.lesson;
    CHECK(l.student.code == "RU-04");
    CHECK(l.student.hand.value == unit::Hand::right);
    CHECK(l.coach.name == "Tom Harling");
    CHECK(record::iso(l.date.value) == "2026-05-14");
    CHECK(l.units == unit::Units{unit::Distance::yards, unit::Speed::miles_per_hour});
    CHECK(l.club.loft->value == 32);
    CHECK(l.bag.size() == 6);
    REQUIRE(l.aim);
    CHECK(l.aim->least == -2);
    CHECK(l.aim->most == 4);
    CHECK(l.aim->worth_having == 2);
    CHECK(l.before.lay == unit::Lay::palm);
    CHECK(l.before.gap == true);
    CHECK(l.after.knuckles == 2.0);
    CHECK(l.after.v == unit::VPoint::trail_eye);
    REQUIRE(l.shots);
    CHECK(l.shots->sign->value == record::Sign::right_positive);
    REQUIRE(l.shots->rules.size() == 1);
    CHECK(l.shots->rules[0].limit == Approx(0.85));
    CHECK(l.shots->rules[0].of_block_median);
    CHECK(l.drills.size() == 2);
    CHECK(l.conditions.height->value == 80);
    CHECK(record::iso(*l.next) == "2026-05-28");
    CHECK(l.history.size() == 2);
}

TEST_CASE("the other examples are read without a word") {
    for (const char* name : {"left-hand", "video", "junior"}) {
        Reading r(example(name));
        record::check_lesson(r.lesson, r.findings);
        INFO(name << "\n" << diag::print_all(r.findings));
        CHECK(r.findings.total() == 0);
    }
}

TEST_CASE("a wind is a speed and where it comes from") {
    const auto wind = [](const std::string& text) {
        Reading r("student: {name: A, hand: right}\ndate: 2026-05-14\nsaw: s\nchanged: c\n"
                  "units: {distance: metres, speed: km/h}\nconditions: {pressure: 990, wind: \"" +
                  text + "\"}\n");
        INFO(text << "\n" << diag::print_all(r.findings));
        CHECK(r.findings.total() == 0);
        CHECK(r.lesson.conditions.pressure->value == Approx(99000));
        return r.lesson.conditions.wind;
    };
    CHECK(wind("4 m/s from the left")->across.value == Approx(4)); // it blows to the right
    CHECK(wind("4 m/s from the left")->along.value == 0);
    CHECK(wind("10 mph into")->along.value == Approx(-4.4704)); // 1 mph is 0.44704 m/s, exact
    CHECK(wind("18 from behind")->along.value == Approx(5));    // km/h, as the record's units say
    CHECK(wind("4 m/s from ahead right")->along.value == Approx(-2.828427));
    CHECK(wind("4 m/s from ahead right")->across.value == Approx(-2.828427));
    CHECK_FALSE(wind("none"));
}

TEST_CASE("what was not looked at stays empty") {
    const Reading r(least + "grip:\n  before: {lay: not looked at, knuckles: Not_looked_at, gap: "
                            "not looked at, join:}\n");
    CHECK(r.findings.total() == 0);
    CHECK_FALSE(r.lesson.has_before);
    CHECK(r.lesson.before == unit::Grip{});
}

TEST_CASE("the hold a lesson ended with is the one to keep, unless a target is named") {
    const std::string ended = least + "grip: {after: {lay: palm, knuckles: 3, V: trail shoulder}";
    const Reading kept(ended + "}\n"), named(ended + ", target: {knuckles: 2}}\n");
    CHECK(kept.lesson.target.knuckles == 3.0);
    CHECK(kept.lesson.target.v == unit::VPoint::trail_shoulder);
    CHECK(!kept.lesson.target.lay); // a palm is never the aim of itself
    CHECK(named.lesson.target.knuckles == 2.0);
}

TEST_CASE("every part left out in turn never stops the reading") {
    const std::string whole = example("right-hand");
    std::vector<std::string> lines;
    for (std::size_t at = 0; at < whole.size();) {
        const std::size_t end = std::min(whole.find('\n', at), whole.size());
        lines.push_back(whole.substr(at, end - at));
        at = end + 1;
    }
    for (std::size_t skip = 0; skip < lines.size(); ++skip) {
        std::string text;
        for (std::size_t i = 0; i < lines.size(); ++i)
            if (i != skip) text += lines[i] + "\n";
        Reading r(text);
        if (r.findings.clean()) record::check_lesson(r.lesson, r.findings);
        INFO(lines[skip]);
        CHECK(diag::print_all(r.findings).size() < 20000);
    }
}

TEST_CASE("a text cut anywhere gives findings, never a crash") {
    const std::string whole = example("left-hand");
    for (std::size_t cut = 0; cut < whole.size(); cut += 7) {
        const Reading r(whole.substr(0, cut));
        CHECK(r.findings.total() <= 40);
    }
}

TEST_CASE("rows and words make blocks") {
    const Reading r(least + "shots:\n  file: s.csv\n  rows: {before: \"1-5, 8 to 12\", warm-up: 6, "
                            "after: [13-20, 22]}\n"
                            "  blocks: {B: Before, W: warm up, O: old hold again}\n");
    REQUIRE(r.findings.total() == 0);
    CHECK(r.lesson.shots->block_rows.at("before").at(1).last == 12);
    CHECK(r.lesson.shots->block_rows.at("warmup").at(0).first == 6);
    CHECK(r.lesson.shots->block_rows.at("after").size() == 2);
    CHECK(r.lesson.shots->block_words.at("B") == "before");
    CHECK(r.lesson.shots->block_words.at("W") == "warmup");
    CHECK(r.lesson.shots->block_words.at("O") == "old hold again");
}
