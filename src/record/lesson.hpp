// The lesson as the coach wrote it: plain values, places where a later check may need them.
#pragma once

#include "diag/source.hpp"
#include "unit/display.hpp"
#include "unit/grip.hpp"
#include "unit/measure.hpp"
#include "unit/quantity.hpp"
#include "unit/stage.hpp"

#include <chrono>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace record {

using Date = std::chrono::year_month_day;

enum class Age : std::uint8_t { adult, junior };
enum class Paper : std::uint8_t { a4, letter, a5 };

struct Student {
    std::string name; ///< as printed; the code stands in when it is empty
    std::string code;
    diag::Located<unit::Hand> hand;
    Age age = Age::adult;
    std::string says; ///< the goal in the student's own words
};

struct Coach {
    std::string name;
    std::string contact; ///< one line, printed as written
    std::string academy;
};

struct Club {
    std::string name; ///< as printed, "seven iron"
    std::optional<unit::Degrees> loft, lie;
    std::optional<double>
        face_share;         ///< of the start direction, 0.5 to 0.95, when the coach knows it
    std::string share_from; ///< where that share comes from, printed beside it
    diag::Span span;
};

/// The one aim of the lesson, named before the after-shots.
struct Aim {
    diag::Located<unit::Measure> measure;
    double least = 0, most = 0; ///< wanted range in SI or degrees, right positive
    double worth_having = 0;    ///< smallest change that matters, SI or degrees
    bool named_before = true;
};

/// How a shot column says right and left.
enum class Sign : std::uint8_t { right_positive, left_positive, open_positive };

/// One rule for setting shots aside, stated before looking, the same for every block.
struct SetAsideRule {
    unit::Measure measure;
    bool below = true; ///< set aside when below (else above) the limit
    double limit = 0;  ///< SI or degrees, or a part of the block's median
    bool of_block_median = false;
    std::string text; ///< as the coach wrote it
    diag::Span span;
};

/// Rows of the table that make a block: 1-12 means the first twelve shots.
struct RowRange {
    int first = 0, last = 0;
};

struct ShotSource {
    diag::Located<std::string> file; ///< relative to the record
    std::map<unit::Measure, diag::Located<std::string>> columns;
    std::optional<diag::Located<std::string>> number_column, block_column, club_column,
        set_aside_column;
    std::map<std::string, std::string>
        block_words; ///< the table's word -> before, after, cold, warmup or a name
    std::map<std::string, std::vector<RowRange>>
        block_rows; ///< block -> rows, when there is no column
    std::optional<diag::Located<Sign>> sign;
    std::optional<unit::Distance> distance; ///< units of the table, when its header names none
    std::optional<unit::Speed> speed;
    std::vector<SetAsideRule> rules;
    diag::Span span;
    diag::Span rows_span; ///< of `rows`, when it is written
};

/// The wind on the range as the coach wrote it, seen by a player facing the target.
struct Wind {
    unit::MetresPerSecond along;  ///< positive: from behind the player
    unit::MetresPerSecond across; ///< positive: blowing to the right
    std::string text;             ///< as written
};

/// Where and how the shots were hit.
struct Conditions {
    std::string text; ///< printed as written: "indoors, mat, range balls"
    std::optional<unit::Metres> height;
    std::optional<double> celsius;
    std::optional<unit::Pascal> pressure; ///< at the place itself
    std::optional<Wind> wind;
    bool same_set_up = true; ///< false: before and after are not comparable, `why_not` says why
    std::string why_not;
};

/// What a house puts on its sheets. Files are relative to the file that names them.
struct Marks {
    diag::Located<std::string> logo, signature, accent;
    std::vector<std::string> contact; ///< lines, printed as written
};

/// What is cut off a photograph at each side, parts of its width and height once it is upright.
struct Crop {
    double left = 0, top = 0, right = 0, bottom = 0;
};

struct Photograph {
    diag::Located<std::string> file; ///< beside the record
    Crop crop;
};

/// The student's own pictures of the hold.
struct Photographs {
    std::optional<Photograph> before, after;
    std::string caption;
};

struct DrillWish {
    diag::Located<std::string> id;
    std::string why;  ///< the coach's own reason, empty for the drill's own
    std::string dose; ///< replaces the drill's own dose
    std::string pass; ///< replaces the drill's own pass mark
    std::string cue;
    diag::Located<std::string> link; ///< a film of this drill, say
    std::optional<int> tries;        ///< counted tries a day, when the dose is the coach's own
    std::optional<unit::Stage> stage;
};

/// The if-then line, typed before the student leaves; empty parts are printed as rules to write on.
struct Plan {
    std::string when, where, obstacle, instead;
};

/// "8 of 10".
struct Tally {
    int right = 0, of = 0;
};

/// What came back of one drill of the last sheet.
struct Returned {
    diag::Located<std::string> drill;
    std::optional<int> days_done;
    diag::Span days_span;
    std::optional<Tally> right; ///< on the last full day
    diag::Span right_span;
    std::optional<Tally> called; ///< called right before looking
    std::optional<Tally> cold;   ///< the boxes of the cold test
    std::optional<bool> passed;  ///< the coach's own answer; else it follows from the count
    std::optional<unit::Stage> stage;
    std::optional<int> lessons; ///< for so many lessons it came back without a pass, this one too
    std::string planned, words;
    diag::Span span;
};

struct HistoryLine {
    std::optional<Date> date;
    std::string text;
};

struct Lesson {
    Student student;
    Coach coach;
    std::string place;
    diag::Located<Date> date;
    std::optional<int> number;
    int revision = 1;
    diag::Span revision_span;
    std::string replaces; ///< what a revision replaces and why

    std::string language = "en-GB";
    Paper paper = Paper::a4;
    unit::Units units;
    bool large_print = false;
    bool glove = false;
    bool suggestion = true; ///< no: the coach strikes what the program suggests to train next

    Club club;
    std::vector<Club> bag; ///< the student's own clubs; empty: a typical bag
    std::optional<Aim> aim;
    std::string saw, changed, why, comment;
    diag::Span saw_span, changed_span, why_span, comment_span;

    unit::Grip before, after, target;
    bool has_before = false, has_after = false;
    diag::Span grip_span, before_span, after_span;
    std::vector<diag::Located<std::string>> views; ///< views the coach chose, in order; empty: ours
    std::vector<std::string> targets;              ///< the coach's own targets, in own words

    Photographs photographs;
    Marks marks;
    diag::Located<std::string> link; ///< of the coach, printed as a code on the drill page

    std::optional<ShotSource> shots;
    bool no_shots = false; ///< the record says that none were measured
    Conditions conditions;
    std::vector<DrillWish> drills;
    Plan plan;
    std::optional<Date> next, cold_test;
    diag::Span next_span, cold_test_span;
    std::vector<std::string> notes;         ///< for the next coach
    std::vector<Returned> returned;         ///< one a drill, at most two
    diag::Located<std::string> last_lesson; ///< path to the record of the lesson before
    bool pain = false;                      ///< nothing is proposed; never printed
    int log_days = 14;                      ///< 14, or 28 with a second log
    std::vector<HistoryLine> history;

    std::string printed_name() const { return student.name.empty() ? student.code : student.name; }
};

} // namespace record
