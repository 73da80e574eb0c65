// Lessons of one student side by side, and what they say of each other.
#pragma once

#include "figure/progress.hpp"
#include "page/story.hpp"

#include <optional>
#include <string>
#include <vector>

namespace page {

/// One lesson among the others.
struct Attended {
    const Story* story = nullptr;
    std::optional<long> days_before;        ///< since the lesson before
    std::optional<measure::Retention> kept; ///< of its change, by the next lesson's cold test
    std::optional<record::Date> kept_on;    ///< the day of that cold test
    std::optional<measure::Sample> cold;    ///< that cold test's shots of this lesson's aim
};

/// A drill the coach has passed.
struct PassedDrill {
    const drills::Drill* drill = nullptr;
    const record::DrillWish* wish = nullptr; ///< of the lesson that set it; none when no lesson did
    record::Date on{};
};

/// One block of one day, with its count.
struct CourseRow {
    record::Date date{};
    figure::Symbol symbol = figure::Symbol::cold;
    measure::Sample sample;
};

/// All that was measured of one aim with one club.
struct AimCourse {
    unit::Measure measure = unit::Measure::face;
    std::string club;                              ///< as printed; empty when no lesson names one
    std::vector<figure::ProgressMeasure> pictures; ///< the aim first
    std::vector<CourseRow> rows;                   ///< of the aim, in the order of hitting
    std::size_t cold_tests = 0;
};

struct Course {
    std::vector<Attended> lessons; ///< by date
    std::vector<AimCourse> aims;   ///< in the order of their first lesson
    std::vector<PassedDrill> passed;

    const record::Lesson& latest() const { return lessons.back().story->lesson; }
};

/// Weeks of a gap, rounded.
inline long weeks(long days) { return (days + 3) / 7; }

} // namespace page
