// One student's lessons in a row, and what is expected of them.
#pragma once

#include "../drills/stock.hpp"
#include "../words/sentences.hpp"
#include "page/drill_loop.hpp"
#include "page/verdict.hpp"
#include "report/numbers.hpp"
#include "report/practice_notes.hpp"
#include "report/tell.hpp"
#include "report/tell_drills.hpp"

#include <catch2/catch.hpp>

#include <algorithm>
#include <chrono>

namespace practice {

using namespace std::chrono_literals;
using drills::Step;
using measure::Kept;
using shots::Block;
using unit::Hand;
using unit::Measure;
using unit::Stage;

inline const std::vector<drills::Drill>& library() {
    static const auto all = stock::drills_of("en");
    return all;
}

/// Ten shots evenly about the middle.
inline void add(shots::Table& table, Block block, Measure measure, double middle, int count = 10,
                double step = 0.3) {
    for (int i = 0; i < count; ++i) {
        shots::Shot shot;
        shot.number = static_cast<int>(table.shots.size()) + 1;
        shot.block = block;
        shot.values[static_cast<std::size_t>(measure)] = middle + step * (i - (count - 1) / 2.0);
        table.shots.push_back(shot);
    }
    table.measured[static_cast<std::size_t>(measure)] = true;
}

inline shots::Table faces(std::optional<double> cold, double before, double after) {
    shots::Table table;
    if (cold) add(table, Block::cold, Measure::face, *cold);
    add(table, Block::before, Measure::face, before);
    add(table, Block::after, Measure::face, after);
    return table;
}

/// One student's lessons, in order.
struct Course {
    struct Day {
        record::Lesson lesson;
        std::optional<shots::Table> table;
    };
    Hand hand = Hand::right;
    bool junior = false;
    std::vector<Day> days;

    record::Lesson& lesson(std::optional<shots::Table> table = {}) {
        Day& day = days.emplace_back();
        day.table = std::move(table);
        day.lesson.student = {.name = "Nora", .code = "NO-01"};
        day.lesson.student.hand.value = hand;
        if (junior) day.lesson.student.age = record::Age::junior;
        day.lesson.club.name = "seven iron";
        day.lesson.date.value = std::chrono::sys_days(2026y / std::chrono::May / 1) +
                                std::chrono::days(14 * days.size());
        day.lesson.saw = "Saw.", day.lesson.changed = "Changed.";
        if (day.table) day.lesson.aim = record::Aim{{Measure::face, {}}, -2, 2, 1, true};
        return day.lesson;
    }
    page::Story story(std::size_t n, diag::Findings& findings) const {
        static const words::Speaker speaker = sentences::speaker("en-GB");
        std::vector<report::Earlier> earlier;
        for (std::size_t i = n; i-- > 0;)
            earlier.push_back({&days[i].lesson, days[i].table ? &*days[i].table : nullptr});
        const Day& day = days[n];
        return report::tell({day.lesson,
                             day.table ? &*day.table : nullptr,
                             library(),
                             {},
                             &speaker,
                             std::move(earlier)},
                            findings);
    }
    page::Story story(std::size_t n) const {
        diag::Findings findings;
        auto out = story(n, findings);
        CHECK(findings.clean());
        return out;
    }
};

inline record::Returned returned(int days_done, int right, int of) {
    record::Returned back;
    back.days_done = days_done;
    back.right = record::Tally{right, of};
    return back;
}

inline void expect_next(const page::Story& story, Step step, const std::string& drill,
                        Stage stage) {
    REQUIRE(story.last);
    REQUIRE_FALSE(story.last->drills.empty());
    REQUIRE(story.last->drills.front().next);
    CHECK(story.last->drills.front().next->step == step);
    CHECK(story.last->drills.front().next->homework.drill == drill);
    CHECK(story.last->drills.front().next->homework.stage == stage);
}

inline void expect_printed(const page::Story& story, const std::string& drill, Stage stage) {
    REQUIRE(story.drills.size() == 1);
    CHECK(story.drills.front().drill.id == drill);
    CHECK(story.drills.front().stage == stage);
    CHECK(story.drills.front().proposed);
}

inline const measure::Retention& retention(const page::Story& story) {
    const auto found = std::ranges::find(story.evidence, Measure::face, &page::Evidence::measure);
    REQUIRE(found != story.evidence.end());
    REQUIRE(found->retention);
    return *found->retention;
}

} // namespace practice
