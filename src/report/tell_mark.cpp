#include "report/tell_mark.hpp"

#include "measure/window.hpp"
#include "report/block_values.hpp"

#include <cmath>
#include <numbers>

namespace report {

namespace {

constexpr double ball = 0.04267; // m; the least diameter that the Rules of Golf allow
constexpr double step = 0.75;    // m; common practice, no source
constexpr int steps_ahead = 3, fewest_balls = 2, most_balls = 14;
constexpr int most_aside = 8; // units of distance beside the target line
constexpr double far = 50;    // units of distance

double degrees(double side, double ahead) {
    return std::atan(side / ahead) * 180 / std::numbers::pi;
}

} // namespace

std::optional<page::GroundMark> ground_mark(const page::Story& story, drills::Mark kind) {
    using unit::Measure;
    if (kind == drills::Mark::none || !story.table ||
        !story.table->measured[static_cast<std::size_t>(Measure::start)])
        return std::nullopt;
    const auto values = [&](shots::Block block) {
        return counted(of_block(*story.table, block, Measure::start), Measure::start).values;
    };
    std::vector<double> halves;
    std::vector<page::GroundMark> marks;
    const auto add = [&](double side, page::GroundMark mark) {
        halves.push_back(degrees(side, mark.distance));
        marks.push_back(mark);
    };
    if (kind == drills::Mark::gate) {
        // the ball's middle has to stay half a ball clear of either side
        for (int n = fewest_balls; n <= most_balls; ++n)
            add((n - 1) * ball / 2, {kind, n, steps_ahead, n * ball, steps_ahead * step});
    } else {
        const double unit = unit::size_of_unit(unit::Kind::length, story.lesson.units);
        for (int n = 1; n <= most_aside; ++n)
            add(n * unit, {kind, n, static_cast<int>(far), n * unit, far * unit});
    }
    const auto found =
        measure::window(values(shots::Block::before), values(shots::Block::after), halves);
    if (!found) return std::nullopt;
    page::GroundMark mark = marks[found->index];
    mark.before = found->before, mark.of_before = found->of_before;
    mark.after = found->after, mark.of_after = found->of_after;
    return mark;
}

} // namespace report
