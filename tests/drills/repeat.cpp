// The repeat rule, row by row: passed and kept, passed and not kept, not passed twice, not done.
#include "drills/repeat.hpp"

#include <catch2/catch.hpp>

using drills::Homework;
using drills::Outcome;
using drills::repeat_rule;
using drills::Step;
using unit::Stage;

namespace {

struct Row {
    const char* what;
    Homework set;
    Outcome came_back;
    Step step;
    Homework next;
};

} // namespace

TEST_CASE("what comes back decides what comes next") {
    const Homework place{"H1", Stage::place, 0}, blend{"H1", Stage::blend, 0},
        play{"H1", Stage::play, 0};
    const Row table[] = {
        {"passed and kept", place, {9, true, true}, Step::promote, blend},
        {"passed and kept again", blend, {9, true, true}, Step::promote, play},
        {"passed and kept at last", play, {9, true, true}, Step::finished, play},
        {"passed, not kept", blend, {9, true, false}, Step::new_place, blend},
        {"passed, past the range when cold", blend, {9, true, false, true}, Step::less, blend},
        {"not passed, past the range",
         blend,
         {9, false, false, true},
         Step::again,
         {"H1", Stage::blend, 1}},
        {"passed, no cold test", blend, {9, true, {}}, Step::test, blend},
        {"not passed once", blend, {9, false, {}}, Step::again, {"H1", Stage::blend, 1}},
        {"not passed, yet kept", blend, {9, false, true}, Step::again, {"H1", Stage::blend, 1}},
        {"not passed twice",
         {"H1", Stage::blend, 1},
         {9, false, {}},
         Step::easier,
         {"H4", Stage::place, 0}},
        {"not done", blend, {0, {}, {}}, Step::plan, blend},
        {"hardly done",
         {"H1", Stage::place, 1},
         {2, false, {}},
         Step::plan,
         {"H1", Stage::place, 1}},
        {"three days are done", place, {3, false, {}}, Step::again, {"H1", Stage::place, 1}},
        {"the coach says passed", place, {1, true, true}, Step::promote, blend},
        {"not counted", place, {9, {}, {}}, Step::count, place},
        {"passed after a miss", {"H1", Stage::place, 1}, {9, true, false}, Step::new_place, place},
    };
    for (const auto& row : table) {
        INFO(row.what);
        const auto next = repeat_rule(row.set, row.came_back, "H4");
        REQUIRE(next);
        CHECK(next->step == row.step);
        CHECK(next->homework == row.next);
    }
}

TEST_CASE("where there is no easier drill, the stage before is the easier one") {
    const auto next = repeat_rule({"S5", Stage::play, 1}, {9, false, {}}, "");
    REQUIRE(next);
    CHECK(next->step == Step::easier);
    CHECK(next->homework == Homework{"S5", Stage::blend, 0});
    CHECK(repeat_rule({"S5", Stage::place, 1}, {9, false, {}}, "")->homework ==
          Homework{"S5", Stage::place, 0});
}

TEST_CASE("when nothing came back the rule is silent") {
    CHECK_FALSE(repeat_rule({"H1", Stage::place, 0}, {}, "H4"));
    CHECK_FALSE(repeat_rule({"H1", Stage::place, 0}, {{}, {}, true}, "H4"));
}
