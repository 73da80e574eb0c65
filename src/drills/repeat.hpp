// What comes after a drill that was taken home: the rule that the sheet prints.
#pragma once

#include "unit/stage.hpp"

#include <optional>
#include <string>

namespace drills {

/// Fewer days than this is "not done": a pass mark on three different days cannot have been met.
inline constexpr int fewest_days = 3;
/// After so many lessons in a row without a pass an easier drill takes the place.
inline constexpr int lessons_without_pass = 2;

/// One drill as it was set.
struct Homework {
    std::string drill; ///< id
    unit::Stage stage = unit::Stage::place;
    int not_passed = 0; ///< lessons in a row in which it came back not passed
    friend bool operator==(const Homework&, const Homework&) = default;
};

/// What came back. Empty where it was not told.
struct Outcome {
    std::optional<int> days_done;
    std::optional<bool> passed; ///< the drill's pass mark was met
    std::optional<bool> kept;   ///< the cold test still showed it; "partly" is not kept
    bool past = false;          ///< not kept, for the cold test went past the wanted range
};

enum class Step : std::uint8_t {
    promote,   ///< passed and kept: the next stage
    finished,  ///< passed and kept on the last stage: the drill is done
    test,      ///< passed, no cold test yet: the same, and the cold test
    new_place, ///< passed, not kept: the same drill in another place
    again,     ///< not passed for the first time: the same
    easier,    ///< not passed twice: an easier drill, else the stage before
    plan,      ///< not done: change the plan line, not the swing
    count,     ///< done, but nothing was counted: the same, with a count
    less,      ///< passed, and cold past the wanted range: the same, a little less of the change
};

struct Next {
    Step step = Step::again;
    Homework homework; ///< what the rule sets now; after `finished` still the drill that is done
};

/// Nothing when nothing came back. `easier` is the id of the easier drill, empty when there is
/// none.
std::optional<Next> repeat_rule(const Homework& set, const Outcome& came_back,
                                const std::string& easier);

} // namespace drills
