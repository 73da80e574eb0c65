#include "table.hpp"

#include "../drills/stock.hpp"
#include "../words/sentences.hpp"
#include "report/numbers.hpp"
#include "report/tell.hpp"
#include "report/tell_ball.hpp"

#include <catch2/catch.hpp>

#include <chrono>
#include <iostream>

namespace {

using ball::Outcome;
using table::Shots;
using unit::Measure;

record::Lesson lesson_with(std::string club, std::optional<double> loft = 32) {
    record::Lesson lesson;
    lesson.club.name = std::move(club);
    if (loft) lesson.club.loft = unit::Degrees{*loft}, lesson.club.lie = unit::Degrees{62};
    return lesson;
}

page::Story told(const record::Lesson& lesson, const shots::Table& table) {
    static const words::Speaker speaker = sentences::speaker("en-GB");
    static const std::vector<drills::Drill> none;
    diag::Findings findings;
    return report::tell({lesson, &table, none, table::clubs(), &speaker}, findings);
}

constexpr Shots open_face{12, -3, 30, 34, 10}, square_face{0, -3, 26, 34, 10};

const report::Number* row(const std::vector<report::Number>& rows, std::string_view what,
                          std::string_view block) {
    const auto found = std::ranges::find_if(
        rows, [&](const auto& r) { return r.what == what && r.block == block; });
    return found == rows.end() ? nullptr : &*found;
}

} // namespace

TEST_CASE("a seven iron opened by a dozen degrees plays one to two clubs weaker") {
    // common practice, no source
    const auto lesson = lesson_with("seven iron");
    auto shots = table::of({12, 0, 30, 34, 10}, {0, 0, 26, 34, 10});
    table::forget(shots, Measure::loft);
    table::forget(shots, Measure::launch); // nothing but the face is left to tell the loft
    const auto story = told(lesson, shots);
    REQUIRE(story.ball);
    REQUIRE(story.ball->before.plays_like);
    REQUIRE(story.ball->after.plays_like);
    CHECK(story.ball->before.loft.origin == ball::LoftOrigin::from_face);
    const double clubs = story.ball->before.plays_like->rung - story.ball->after.plays_like->rung;
    CHECK(clubs >= 1);
    CHECK(clubs <= 2);
    CHECK(story.ball->after.plays_like->lower == story.ball->in_hand);
}

TEST_CASE("leaning the shaft alike in both blocks changes nothing of what a club plays like") {
    const auto lesson = lesson_with("seven iron");
    const auto upright = told(lesson, table::of({12, -3, 38, 34, 10}, {0, -3, 32, 34, 10}));
    const auto leaning = told(lesson, table::of({12, -3, 30, 34, 10}, {0, -3, 24, 34, 10}));
    REQUIRE(upright.ball->before.club_loft);
    REQUIRE(leaning.ball->before.club_loft);
    CHECK(leaning.ball->lean->value == Approx(8).margin(1e-6));
    CHECK(upright.ball->before.club_loft->value ==
          Approx(leaning.ball->before.club_loft->value).margin(1e-6));
    CHECK(leaning.ball->after.club_loft->value == Approx(32).margin(1e-6));
    // a lean that no swing has: club and table do not belong together
    const auto wrong = told(lesson, table::of({12, -3, 14, 34, 10}, {0, -3, 10, 34, 10}));
    CHECK_FALSE(wrong.ball->lean);
    CHECK_FALSE(wrong.ball->before.plays_like);
}

TEST_CASE("two clubs are not compared, and nothing of their difference is shared out") {
    auto lesson = lesson_with("seven iron");
    lesson.aim = record::Aim{{Measure::face, {}}, -2, 2, 1, true};
    auto shots = table::of(open_face, square_face);
    CHECK(told(lesson, shots).ball->credit);
    for (auto& shot : shots.shots)
        shot.club = shot.block == shots::Block::before ? "driver" : "seven iron";
    const auto story = told(lesson, shots);
    CHECK_FALSE(story.ball->credit);
    REQUIRE_FALSE(story.evidence.empty());
    CHECK(story.evidence.front().change.verdict == measure::Verdict::not_comparable);
    CHECK(shots::clubs_compared(shots) == std::vector<std::string>{"driver", "seven iron"});
}

TEST_CASE("wind, pressure and a share of the coach's own reach the flights and their notes") {
    auto lesson = lesson_with("seven iron");
    auto shots = table::of(open_face, square_face);
    table::forget(shots, Measure::carry);
    table::forget(shots, Measure::offline);
    const auto carry = [&] { return told(lesson, shots).ball->after.typical->model.carry.value; };
    const auto offline = [&] {
        return told(lesson, shots).ball->after.typical->model.offline.value;
    };
    const double still = carry(), straight = offline();
    lesson.conditions.wind = record::Wind{{-5}, {0}, "5 m/s into"};
    CHECK(carry() < still - 5);
    lesson.conditions.wind = record::Wind{{0}, {5}, "5 m/s from the left"};
    CHECK(offline() > straight + 5);
    lesson.conditions.wind.reset();
    lesson.conditions.pressure = unit::Pascal{90000};
    CHECK(carry() != Approx(still).margin(0.5));

    lesson.club.face_share = 0.8;
    lesson.club.share_from = "forty shots of ours";
    const auto story = told(lesson, shots);
    CHECK(story.ball->face_share == Approx(0.8));
    CHECK(story.ball->share_source == page::ShareSource::given);
    CHECK(story.ball->share_from == "forty shots of ours");
}

TEST_CASE("a club is known by its own loft, else by its name, else not at all") {
    const auto shots = table::of(open_face, square_face);
    const auto own = lesson_with("seven iron", 30.5), usual = lesson_with("Seven Iron", {}),
               unknown = lesson_with("old favourite", {});
    CHECK(told(own, shots).ball->club->loft.value == 30.5);
    CHECK_FALSE(told(own, shots).ball->usual_club);
    const auto named = told(usual, shots);
    REQUIRE(named.ball->club);
    CHECK(named.ball->usual_club);
    CHECK(named.ball->usual_bag);
    CHECK(named.ball->names[named.ball->in_hand].name == "seven-iron");
    const auto none = told(unknown, shots);
    REQUIRE(none.ball);
    CHECK_FALSE(none.ball->club);
    CHECK_FALSE(none.ball->before.plays_like);
    CHECK(none.ball->bag.empty());
    CHECK(none.ball->before.typical); // the table's own loft is enough for a flight
}

TEST_CASE("the student's own bag stands before the typical one") {
    auto lesson = lesson_with("seven iron");
    for (const double loft : {28.0, 32.0, 37.0, 42.0})
        lesson.bag.push_back(
            {"club " + std::to_string(static_cast<int>(loft)), unit::Degrees{loft}, {}, {}});
    const auto story = told(lesson, table::of(open_face, square_face));
    CHECK_FALSE(story.ball->usual_bag);
    CHECK(story.ball->bag.size() == 4);
    CHECK(story.ball->names[story.ball->in_hand].name == "club 32"); // the same loft, another name
}

TEST_CASE("a shot set aside says nothing about the ball") {
    const auto lesson = lesson_with("seven iron");
    auto shots = table::of(open_face, square_face);
    const auto plain = told(lesson, shots);
    table::add(shots, shots::Block::before, {-25, 20, 45, 20, 1});
    shots.shots.back().set_aside = "heel";
    const auto with = told(lesson, shots);
    CHECK(with.ball->before.shots == plain.ball->before.shots);
    CHECK(with.ball->before.flights.size() == plain.ball->before.flights.size());
    CHECK(with.ball->before.middle.face->value == plain.ball->before.middle.face->value);
    CHECK((*with.ball->credit)[Outcome::start].shares[0]->value ==
          (*plain.ball->credit)[Outcome::start].shares[0]->value);
}

TEST_CASE("a measured start direction wins over face and path, an estimate is marked") {
    const auto lesson = lesson_with("seven iron");
    auto shots = table::of(open_face, square_face);
    const auto measured = told(lesson, shots);
    CHECK_FALSE(measured.ball->before.start_estimated);
    CHECK_FALSE(measured.ball->before.start_range);
    CHECK(measured.ball->share_source == page::ShareSource::fitted);
    table::forget(shots, Measure::start);
    const auto estimated = told(lesson, shots);
    REQUIRE(estimated.ball->before.start);
    CHECK(estimated.ball->before.start_estimated);
    const auto& range = *estimated.ball->before.start_range;
    CHECK(range.lower <= range.value);
    CHECK(range.value <= range.upper);
    // path -3, face 12, shares of 0.61 and 0.83 (Wood, Henrikson & Broadie 2018)
    CHECK(range.lower.value == Approx(-3 + 0.61 * 15).margin(0.2));
    CHECK(range.upper.value == Approx(-3 + 0.83 * 15).margin(0.2));
}

TEST_CASE("a face that was not measured is estimated from start direction and path") {
    const auto lesson = lesson_with("seven iron");
    auto shots = table::of(open_face, square_face);
    table::forget(shots, Measure::face);
    const auto story = told(lesson, shots);
    REQUIRE(story.ball->before.face_estimate);
    const auto& face = *story.ball->before.face_estimate;
    CHECK(face.lower.value <= 12);
    CHECK(face.upper.value >= 12);
    CHECK_FALSE(story.ball->before.middle.face);
}

TEST_CASE("drawn lines end where the table says the ball landed") {
    const auto lesson = lesson_with("seven iron");
    auto shots = table::of(open_face, square_face);
    for (auto& shot : shots.shots) {
        table::put(shot, Measure::carry, 100);
        table::put(shot, Measure::offline, -7);
    }
    const auto story = told(lesson, shots);
    for (const auto& flight : story.ball->before.flights) {
        CHECK(flight.landing_measured);
        CHECK(flight.line.back().right.value == Approx(-7).margin(1e-6));
        CHECK(std::hypot(flight.line.back().right.value, flight.line.back().along.value) ==
              Approx(100).margin(1e-6));
    }
    table::forget(shots, Measure::carry);
    CHECK_FALSE(told(lesson, shots).ball->before.typical->landing_measured);
}

TEST_CASE("a shot too slow for the flight model gets no flight") {
    const auto lesson = lesson_with("seven iron");
    const auto story = told(lesson, table::of({2, 0, 26, 4, 6}, {0, 0, 26, 4, 6}));
    REQUIRE(story.ball);
    CHECK_FALSE(story.ball->before.typical);
    CHECK(story.ball->before.flights.empty());
    const auto rows = report::numbers(story, sentences::speaker("en-GB"));
    CHECK_FALSE(row(rows, "flight of the middle shot: carry", "before"));
}

TEST_CASE("a mirrored table tells the mirrored story") {
    const auto lesson = lesson_with("seven iron");
    auto shots = table::of(open_face, square_face);
    table::forget(shots, Measure::launch);
    const auto right = told(lesson, shots);
    table::mirror(shots);
    const auto left = told(lesson, shots);
    CHECK(left.ball->before.typical->model.offline.value ==
          Approx(-right.ball->before.typical->model.offline.value));
    CHECK(left.ball->before.typical->model.carry.value ==
          Approx(right.ball->before.typical->model.carry.value));
    for (const auto outcome : {Outcome::start, Outcome::curve, Outcome::offline})
        CHECK((*left.ball->credit)[outcome].shares[0]->value ==
              Approx(-(*right.ball->credit)[outcome].shares[0]->value).margin(1e-9));
}

TEST_CASE("two set-ups share out no difference") {
    auto lesson = lesson_with("seven iron");
    lesson.conditions.same_set_up = false;
    CHECK_FALSE(told(lesson, table::of(open_face, square_face)).ball->credit);
}

TEST_CASE("fewer than five shots a side share out nothing and fit no share of the face") {
    const auto lesson = lesson_with("seven iron");
    const auto few = told(lesson, table::of({12, -3, 30, 34, 4}, {0, -3, 26, 34, 10}));
    CHECK_FALSE(few.ball->credit);
    CHECK(few.ball->share_source == page::ShareSource::geometry);
    CHECK(told(lesson, table::of({12, -3, 30, 34, 5}, {0, -3, 26, 34, 5})).ball->credit);
}

TEST_CASE("numbers stand in the student's units, and parts add up to what was measured") {
    const auto lesson = lesson_with("seven iron");
    const auto shots = table::of(open_face, square_face);
    const auto story = told(lesson, shots);
    const auto metric = sentences::speaker("en-GB");
    const auto yards = sentences::speaker(
        "en-GB", {unit::Hand::right, false, {unit::Distance::yards, unit::Speed::miles_per_hour}});
    const auto m = report::numbers(story, metric), y = report::numbers(story, yards);
    REQUIRE(m.size() == y.size());
    REQUIRE(row(m, "carry: median", "after"));
    CHECK(row(m, "carry: median", "after")->unit == "m");
    CHECK(row(y, "carry: median", "after")->unit == "yd");
    // exact: 0.9144 m are a yard (international yard and pound agreement, 1959)
    CHECK(row(y, "carry: median", "after")->value * 0.9144 ==
          Approx(row(m, "carry: median", "after")->value));
    CHECK(row(y, "face: median", "before")->value == row(m, "face: median", "before")->value);
    CHECK(row(m, "effective loft", "before")->origin == "measured");
    double sum = row(y, "credit, start: not explained", "change")->value;
    for (const char* factor : {"face", "path", "effective loft", "speed", "strike"})
        if (const auto* r = row(y, std::string("credit, start: ") + factor, "change")) {
            sum += r->value;
            REQUIRE(r->lower);
            CHECK(*r->lower <= *r->upper);
        }
    CHECK(sum == Approx(row(y, "credit, start: measured", "change")->value));
    const auto* shift = row(m, "face: shift 95 %", "change");
    REQUIRE(shift);
    CHECK(shift->lower <= shift->value);
    for (const auto& r : m)
        CHECK(std::isfinite(r.value));
}

TEST_CASE("a lesson of forty shots is told in 60 ms", "[.cost]") {
    const auto lesson = lesson_with("seven iron");
    const auto shots = table::of({12, -3, 30, 34, 20}, {0, -3, 26, 34, 20});
    page::Story story{lesson};
    story.table = &shots;
    double least = 1e9;
    for (int i = 0; i < 5; ++i) {
        const auto start = std::chrono::steady_clock::now();
        report::tell_ball(story, table::clubs());
        const std::chrono::duration<double, std::milli> took =
            std::chrono::steady_clock::now() - start;
        least = std::min(least, took.count());
    }
    std::cout << "tell_ball, 40 shots, 1000 resamples: " << least << " ms\n";
    CHECK(least < 60);
}
