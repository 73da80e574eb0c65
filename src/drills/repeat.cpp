#include "drills/repeat.hpp"

namespace drills {

namespace {

using unit::Stage;

Next not_passed(const Homework& set, const std::string& easier) {
    const int times = set.not_passed + 1;
    if (times < lessons_without_pass) return {Step::again, {set.drill, set.stage, times}};
    if (!easier.empty()) return {Step::easier, {easier, Stage::place, 0}};
    const auto before = set.stage == Stage::place
                            ? Stage::place
                            : static_cast<Stage>(static_cast<int>(set.stage) - 1);
    return {Step::easier, {set.drill, before, 0}};
}

Next passed(const Homework& set, const Outcome& came_back) {
    if (!came_back.kept) return {Step::test, {set.drill, set.stage, 0}};
    if (!*came_back.kept && came_back.past) return {Step::less, {set.drill, set.stage, 0}};
    if (!*came_back.kept) return {Step::new_place, {set.drill, set.stage, 0}};
    if (set.stage == Stage::play) return {Step::finished, {set.drill, set.stage, 0}};
    return {Step::promote, {set.drill, static_cast<Stage>(static_cast<int>(set.stage) + 1), 0}};
}

} // namespace

std::optional<Next> repeat_rule(const Homework& set, const Outcome& came_back,
                                const std::string& easier) {
    if (!came_back.passed.value_or(false) && came_back.days_done &&
        *came_back.days_done < fewest_days)
        return Next{Step::plan, set};
    if (came_back.passed)
        return *came_back.passed ? passed(set, came_back) : not_passed(set, easier);
    if (came_back.days_done) return Next{Step::count, set};
    return std::nullopt;
}

} // namespace drills
