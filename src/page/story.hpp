// All that one lesson's sheet tells: the record, what was computed from it, and what it is drawn
// with.
#pragma once

#include "drills/drill.hpp"
#include "figure/easel.hpp"
#include "figure/strength.hpp"
#include "hand/hand.hpp"
#include "measure/change.hpp"
#include "measure/retention.hpp"
#include "page/ball_story.hpp"
#include "page/pictures.hpp"
#include "record/lesson.hpp"
#include "shots/table.hpp"

#include <optional>
#include <string>
#include <vector>

namespace page {

/// One measure's shots and what changed.
struct Evidence {
    unit::Measure measure = unit::Measure::face;
    std::vector<shots::Shot> before, after,
        cold; ///< in order, set-aside ones too, only where measured
    measure::Change change;
    std::optional<measure::Sample> cold_sample;
    std::optional<measure::Retention> retention;
    bool is_aim = false;
    bool estimated = false; ///< computed by us, not in the table
};

/// A drill of the sheet, the coach's or the program's proposal.
struct ChosenDrill {
    drills::Drill drill;
    record::DrillWish wish;
    bool proposed = false;  ///< by the program; the page says so
    std::string reason_key; ///< words key of the program's reason, for a proposal
};

/// One view of the hold, before and after; either may be missing when nothing was recorded for it.
struct GripView {
    hand::View view = hand::View::golfers_eye;
    std::optional<hand::Picture> before, after;
    const char* first_key = "grip.before"; ///< words over each
    const char* second_key = "grip.after";
};

struct Story {
    const record::Lesson& lesson;
    const shots::Table* table = nullptr; ///< none for a lesson without shots
    std::vector<Evidence> evidence;      ///< the aim first, then in the order of unit::measures
    std::vector<GripView> views;         ///< those the coach chose, in that order
    std::optional<hand::Facts> before, after;      ///< of the posed hands
    std::optional<figure::StrengthInput> strength; ///< when knuckles were counted
    std::vector<ChosenDrill> drills;               ///< at most two
    std::optional<BallStory> ball;                 ///< none for a lesson without shots
    Pictures pictures;                             ///< what the coach brings beside words
};

inline bool is_junior(const Story& story) {
    return story.lesson.student.age == record::Age::junior;
}

} // namespace page
