// Proposals, pass marks and the loop of home practice: three invented students over four lessons
// each.
#include "practice.hpp"

using namespace practice;

TEST_CASE("a student who passes and keeps goes up every stage and is done") {
    Course nora;
    nora.lesson(faces({}, 10, 1)).drills = {{.id = {"H1", {}}}};
    nora.lesson(faces(1.5, 6, 1)).returned = {returned(9, 9, 10)};
    nora.lesson(faces(1.2, 5, 0.5)).returned = {returned(10, 8, 10)};
    nora.lesson(faces(0.6, 4, 2.4)).returned = {returned(8, 10, 10)};

    const auto second = nora.story(1);
    CHECK(retention(second).kept == Kept::kept);
    CHECK(retention(second).part > 0.9);
    expect_next(second, Step::promote, "H1", Stage::blend);
    expect_printed(second, "H1", Stage::blend);

    expect_next(nora.story(2), Step::promote, "H1", Stage::play);
    expect_printed(nora.story(2), "H1", Stage::play);

    const auto last = nora.story(3);
    expect_next(last, Step::finished, "H1", Stage::play);
    REQUIRE(last.drills.size() == 2); // the face is still off: the rules choose anew
    CHECK(last.drills[0].drill.id == "F1");
    CHECK(last.drills[1].drill.id == "F3");
    CHECK(last.drills[0].reason_key == "reason.face-off");
}

TEST_CASE("a student who loses it when cold changes the place, and who did not practise the plan") {
    Course ole{.hand = Hand::left};
    ole.lesson(faces({}, -8, -1)).drills = {{.id = {"F1", {}}}};
    auto& second = ole.lesson(faces(-7.8, -6, -1));
    second.returned = {returned(9, 9, 10)};
    second.returned.front().planned = "after breakfast, in the hall";
    ole.lesson(faces({}, -5, -1)).returned = {returned(1, 2, 10)};
    ole.days[2].lesson.returned.front().planned = "on the balcony";
    ole.lesson(faces(-1.2, -4, -0.5)).returned = {returned(11, 10, 10)};

    const auto two = ole.story(1);
    CHECK(retention(two).kept == Kept::not_yet);
    expect_next(two, Step::new_place, "F1", Stage::place);
    expect_printed(two, "F1", Stage::place);
    CHECK(two.last->planned == "after breakfast, in the hall");

    expect_next(ole.story(2), Step::plan, "F1", Stage::place);
    expect_printed(ole.story(2), "F1", Stage::place);

    CHECK(retention(ole.story(3)).kept == Kept::kept);
    expect_next(ole.story(3), Step::promote, "F1", Stage::blend);
    expect_printed(ole.story(3), "F1", Stage::blend);
}

TEST_CASE("a junior without shots who does not pass twice gets the easier drill") {
    Course mila{.junior = true};
    mila.lesson().drills = {{.id = {"H2", {}}}};
    mila.lesson().returned = {returned(6, 2, 5)};
    mila.lesson().returned = {returned(6, 3, 5)};
    mila.lesson().returned = {returned(7, 9, 10)};
    mila.days[3].lesson.returned.front().cold = record::Tally{8, 10};

    expect_next(mila.story(1), Step::again, "H2", Stage::place);
    CHECK(mila.story(1).last->drills.front().next->homework.not_passed == 1);
    expect_next(mila.story(2), Step::easier, "H1", Stage::place);
    expect_printed(mila.story(2), "H1", Stage::place);
    expect_next(mila.story(3), Step::promote, "H1", Stage::blend);
    CHECK(mila.story(3).last->drills.front().name == "Lay and close");
}

TEST_CASE(
    "the coach's drills win over the repeat rule, and take its stage when it is the same one") {
    Course course;
    course.lesson(faces({}, 10, 1)).drills = {{.id = {"H1", {}}}};
    auto& second = course.lesson(faces(1.5, 6, 1));
    second.returned = {returned(9, 9, 10)};
    second.drills = {{.id = {"H4", {}}}, {.id = {"H1", {}}}};
    const auto story = course.story(1);
    REQUIRE(story.drills.size() == 2);
    CHECK(story.drills[0].drill.id == "H4");
    CHECK_FALSE(story.drills[0].proposed);
    CHECK_FALSE(story.drills[0].stage);
    CHECK(story.drills[1].stage == Stage::blend);
    CHECK_FALSE(story.drills[1].proposed);
    second.drills[1].stage = Stage::place;
    CHECK(course.story(1).drills[1].stage == Stage::place);
}

TEST_CASE("two drills that come back each go their own way") {
    Course course;
    course.lesson(faces({}, 10, 1)).drills = {{.id = {"H1", {}}}, {.id = {"H4", {}}}};
    auto& second = course.lesson(faces(1.5, 6, 1));
    second.returned = {returned(9, 9, 10), returned(8, 2, 6)};
    second.returned[0].drill.value = "H1";
    second.returned[1].drill.value = "H4";
    const auto story = course.story(1);
    REQUIRE(story.last->drills.size() == 2);
    CHECK(story.last->drills[0].next->step == Step::promote);
    CHECK(story.last->drills[1].next->step == Step::again);
    REQUIRE(story.drills.size() == 2);
    CHECK(story.drills[0].drill.id == "H1");
    CHECK(story.drills[0].stage == Stage::blend);
    CHECK(story.drills[1].drill.id == "H4");
    CHECK(story.drills[1].stage == Stage::place);
    // both homeworks go on: a third lesson counts the second miss of the one, the pass of the other
    auto& third = course.lesson(faces(1.5, 6, 1));
    third.returned = {returned(9, 9, 10), returned(8, 2, 6)};
    third.returned[0].drill.value = "H1";
    third.returned[1].drill.value = "H4";
    const auto later = course.story(2);
    CHECK(later.last->drills[0].next->homework.stage == Stage::play);
    CHECK(later.last->drills[1].next->step == Step::easier);
    CHECK(later.last->lessons.size() == 2);
}

TEST_CASE("a returned drill that nobody knows is an error with the nearest one") {
    Course course;
    auto& lesson = course.lesson();
    lesson.returned = {returned(9, 8, 10)};
    lesson.returned.front().drill.value = "H11";
    diag::Findings findings;
    const auto story = course.story(0, findings);
    REQUIRE(findings.errors() == 1);
    CHECK(findings.list().front().what.find("'H11'") != std::string::npos);
    CHECK_FALSE(story.last->drills.front().next);
}

TEST_CASE("with no drill named, the sheet bears at most two of the program's, with its reason") {
    Course course;
    course.lesson(faces({}, 10, 5));
    const auto face = course.story(0);
    REQUIRE(face.drills.size() == 2);
    CHECK(face.drills[0].drill.id == "F1");
    CHECK(face.drills[0].proposed);
    CHECK(face.drills[0].reason_key == "reason.face-off");

    auto& lesson = course.days[0].lesson;
    lesson.after.gap = true, lesson.has_after = true;
    const auto hold = course.story(0);
    REQUIRE(hold.drills.size() == 2); // hold first
    CHECK(hold.drills[0].drill.id == "H1");
    CHECK(hold.drills[1].drill.id == "H4");

    lesson.drills = {{.id = {"S5", {}}}};
    const auto story = course.story(0);
    REQUIRE(story.drills.size() == 1);
    CHECK(story.drills[0].drill.id == "S5");
    CHECK(story.proposal.ids == std::vector<std::string>{"H1", "H4"});
}

TEST_CASE("pain ends every proposal, the coach's drills stay, and nothing says so on paper") {
    Course course;
    auto& lesson = course.lesson(faces({}, 10, 5));
    lesson.pain = true;
    CHECK(course.story(0).drills.empty());
    lesson.returned = {returned(9, 10, 10)};
    lesson.returned.front().drill.value = "H1";
    CHECK(course.story(0).drills.empty());
    lesson.drills = {{.id = {"H5", {}}}};
    const auto story = course.story(0);
    REQUIRE(story.drills.size() == 1);
    const auto speaker = sentences::speaker("en-GB");
    for (const auto& row : report::numbers(story, speaker)) {
        CHECK(row.what.find("pain") == std::string::npos);
        CHECK(row.text.find("pain") == std::string::npos);
    }
    const auto notes = report::practice_notes(story, speaker, library());
    REQUIRE(notes.size() == 1);
    CHECK(notes.front().severity == diag::Severity::note);
}

TEST_CASE("the notes tell the proposal and the next three") {
    Course course;
    course.lesson(faces({}, 10, 5)).drills = {{.id = {"S5", {}}}};
    const auto speaker = sentences::speaker("en-GB");
    const auto notes = report::practice_notes(course.story(0), speaker, library());
    REQUIRE(notes.size() == 2);
    CHECK(notes[0].what.find("F1 'Edge to line' and F3 'Cushion press'") != std::string::npos);
    CHECK(notes[0].what.find("face before path") != std::string::npos);
    CHECK(notes[1].what.find("H5") != std::string::npos);
}

TEST_CASE(
    "a gate is as wide as half of before and most of after pass, from measured starts alone") {
    Course course;
    shots::Table table;
    add(table, Block::before, Measure::start, 4, 10, 0.8);
    add(table, Block::after, Measure::start, 0.5, 10, 0.5);
    course.lesson(std::move(table)).drills = {{.id = {"F4", {}}}, {.id = {"F6", {}}}};
    course.days[0].lesson.aim.reset();
    const auto story = course.story(0);
    REQUIRE(story.drills[0].mark);
    const auto& gate = *story.drills[0].mark;
    CHECK(gate.before == 5);
    CHECK(gate.after == 10);
    // the widest passing ball is half a gate less half a ball off the line
    CHECK(gate.width == Approx(gate.size * 0.04267));
    std::size_t passed = 0;
    for (int i = 0; i < 10; ++i) {
        const double start = 4 + 0.8 * (i - 4.5);
        const double side = gate.distance * std::tan(std::abs(start) * 3.14159265358979 / 180);
        passed += side + 0.04267 / 2 <= gate.width / 2 + 1e-9;
    }
    CHECK(passed == gate.before);
    REQUIRE(story.drills[1].mark);
    CHECK(story.drills[1].mark->kind == drills::Mark::window);

    course.days[0].table->measured[static_cast<std::size_t>(Measure::start)] = false;
    CHECK_FALSE(course.story(0).drills[0].mark); // never from estimates
}

TEST_CASE("the coach's number of knuckles stands in the drill that asks for it") {
    Course course;
    auto& lesson = course.lesson();
    lesson.drills = {{.id = {"H3", {}}}};
    const auto steps = [&] {
        std::string all;
        const auto story = course.story(0);
        for (const auto& step : story.drills.front().drill.steps)
            all += step + "\n";
        return all;
    };
    CHECK(steps().find("coach’s number: ____.") != std::string::npos);
    lesson.after.knuckles = 2;
    CHECK(steps().find("coach’s number: 2.") != std::string::npos);
    lesson.target.knuckles = 2.5;
    CHECK(steps().find("coach’s number: 2.5.") != std::string::npos);
}
