// All that one lesson's sheet tells: the record, what was computed from it, and what it is drawn
// with.
#pragma once

#include "drills/drill.hpp"
#include "drills/propose.hpp"
#include "drills/repeat.hpp"
#include "figure/easel.hpp"
#include "figure/strength.hpp"
#include "hand/hand.hpp"
#include "measure/change.hpp"
#include "measure/retention.hpp"
#include "page/ball_story.hpp"
#include "page/pictures.hpp"
#include "record/lesson.hpp"
#include "shots/table.hpp"

#include <algorithm>
#include <optional>
#include <span>
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

/// A pass mark on the ground that the student's own shots gave.
struct GroundMark {
    drills::Mark kind = drills::Mark::gate;
    int size = 0;                   ///< balls between the posts; units beside the line for a window
    int ahead = 0;                  ///< steps; units for a window
    double width = 0, distance = 0; ///< metres: between the posts (to one side for a window), ahead
    std::size_t before = 0, of_before = 0, after = 0,
                of_after = 0; ///< shots that would have passed
};

/// One drill of the last sheet: what was set, what came back, what the repeat rule makes of it.
struct BackDrill {
    record::Returned back;
    std::string name;
    std::optional<drills::Homework> set; ///< what was taken home; none when nothing names it
    drills::Outcome outcome;
    std::optional<drills::Next> next;

    bool goes_on() const { return next && next->step != drills::Step::finished; }
};

struct LastTime {
    std::optional<record::Date> date;         ///< of the lesson before, when its record is linked
    std::vector<record::HistoryLine> lessons; ///< linked lessons and what changed, the oldest first
    std::string planned;                      ///< the if-then plan, in the words of the record
    std::vector<BackDrill> drills;            ///< those that came back, in the order of the record
    std::optional<unit::Measure> measure;     ///< the evidence that tells what was kept
    /// Last time's club and today's, when the cold shots are not compared because they differ.
    std::vector<std::string> other_clubs;
};

/// A drill of the sheet, the coach's or the program's proposal.
struct ChosenDrill {
    drills::Drill drill;
    record::DrillWish wish;
    bool proposed = false;            ///< by the program; the page says so
    std::string reason_key;           ///< words key of the program's reason
    std::optional<unit::Stage> stage; ///< where the student stands with it; none at the first time
    std::optional<GroundMark> mark;
    std::string sign; ///< in the outer corner instead of its number: the drill book prints the id
};

/// One view of the hold, before and after; either may be missing when nothing was recorded for it.
struct GripView {
    hand::View view = hand::View::golfers_eye;
    std::optional<hand::Picture> before, after;
    const char* first_key = "grip.before"; ///< words over each
    const char* second_key = "grip.after";

    /// Of the higher picture; 0 without any.
    double height_to_width() const {
        const auto of = [](const std::optional<hand::Picture>& p) {
            return p ? p->height / p->width : 0;
        };
        return std::max(of(before), of(after));
    }
};

struct Story {
    const record::Lesson& lesson;
    const shots::Table* table = nullptr; ///< none for a lesson without shots
    std::vector<Evidence> evidence;      ///< the aim first, then in the order of unit::measures
    std::vector<GripView> views;         ///< those the coach chose, in that order
    std::vector<GripView> wanted;        ///< the hold to aim at, when the record tells of none
    std::optional<hand::Facts> before, after;      ///< of the posed hands
    std::optional<figure::StrengthInput> strength; ///< when knuckles were counted
    std::optional<LastTime> last;                  ///< none when nothing came back
    drills::Proposal proposal;                     ///< what the printed rules would take today
    std::vector<ChosenDrill> drills;               ///< at most two
    std::optional<BallStory> ball;                 ///< none for a lesson without shots
    Pictures pictures;                             ///< what the coach brings beside words
};

/// The drills that came back from the last sheet; none when nothing did.
inline std::span<const BackDrill> came_back_of(const Story& story) {
    return story.last ? std::span<const BackDrill>(story.last->drills)
                      : std::span<const BackDrill>();
}

inline bool is_junior(const Story& story) {
    return story.lesson.student.age == record::Age::junior;
}

} // namespace page
