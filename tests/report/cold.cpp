// What the cold test and the range that is wanted make of a change.
#include "practice.hpp"

using namespace practice;

TEST_CASE("a change inside the wanted range is not put down to luck") {
    Course gus;
    auto& lesson = gus.lesson(faces({}, 5, 14));
    lesson.aim->least = -20, lesson.aim->most = 20;
    const auto story = gus.story(0);
    CHECK(story.evidence.front().change.shift.at95->lower > 6);
    const auto said =
        page::verdict_words(story, story.evidence.front(), sentences::speaker("en-GB"));
    CHECK(said.head == "Cannot tell yet.");
    CHECK(said.sentences.back() == "Both typical shots already lie in the wanted range.");
}

TEST_CASE("a cold test past the wanted range is no praise and no next stage") {
    Course gus;
    gus.lesson(faces({}, 6.1, 2)).drills = {{.id = {"H1", {}}}};
    gus.lesson(faces(-4.5, 3.3, 1.2)).returned = {returned(9, 8, 10)};
    gus.days[1].lesson.returned.front().cold = record::Tally{7, 10};
    const auto story = gus.story(1);
    CHECK(retention(story).kept == Kept::past);
    expect_next(story, Step::less, "H1", Stage::place);
    expect_printed(story, "H1", Stage::place);
    const words::Speaker speaker = sentences::speaker("en-GB");
    const std::string told = page::kept_words(story, speaker);
    CHECK(told.find("beyond the wanted range") != std::string::npos);
    CHECK(told.find("Do a little less") != std::string::npos);
    CHECK(told.find("still there") == std::string::npos);
    CHECK(page::kept_head(story, speaker) == "Moved past square.");
    const std::string since = page::since_last_time(story, speaker);
    CHECK(since.find("Moved past square.") != std::string::npos);
    CHECK(since.find("still there") == std::string::npos);
}

TEST_CASE("what is kept is not told across another club, hand or set-up") {
    Course course;
    course.lesson(faces({}, 10, 1));
    course.lesson(faces(1.5, 6, 1));
    const auto tells = [&] {
        const auto story = course.story(1);
        return std::ranges::any_of(story.evidence,
                                   [](const auto& e) { return e.retention.has_value(); });
    };
    CHECK(tells());
    CHECK(course.story(1).last->other_clubs.empty());
    course.days[1].lesson.club.name = "driver";
    CHECK_FALSE(tells());
    const words::Speaker speaker = sentences::speaker("en-GB");
    CHECK(page::since_last_time(course.story(1), speaker).find("(seven iron then, driver now)") !=
          std::string::npos);
    course.days[1].lesson.club.name = "Seven Iron";
    CHECK(tells());
    course.days[0].lesson.conditions.same_set_up = false;
    CHECK_FALSE(tells());
    course.days[0].lesson.conditions.same_set_up = true;
    course.days[1].table->measured[static_cast<std::size_t>(Measure::face)] = false;
    CHECK_FALSE(tells()); // an estimate is no measurement
}
