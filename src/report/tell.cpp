#include "report/tell.hpp"

#include "report/block_values.hpp"
#include "report/tell_ball.hpp"
#include "report/tell_drills.hpp"
#include "report/tell_hold.hpp"
#include "report/tell_last.hpp"

#include <algorithm>
#include <functional>

namespace report {

namespace {

using page::Evidence;
using shots::Block;

/// The aim as the verdict rule wants it; nothing for a measure that is not the aim. Sideways carry
/// never gets a verdict: too few shots make it reliable.
std::optional<measure::Wanted> wanted_of(const Inputs& in, unit::Measure measure) {
    const auto& aim = in.lesson.aim;
    if (!aim || aim->measure.value != measure || measure == unit::Measure::offline)
        return std::nullopt;
    measure::Wanted wanted{aim->least, aim->most, aim->worth_having, aim->named_before};
    wanted.comparable =
        in.lesson.conditions.same_set_up && shots::clubs_compared(*in.table).size() <= 1;
    wanted.step = std::max(in.table->step[static_cast<std::size_t>(measure)], 1e-6);
    return wanted;
}

std::optional<Evidence> evidence_of(const Inputs& in, unit::Measure measure) {
    Evidence e{.measure = measure};
    e.before = of_block(*in.table, Block::before, measure);
    e.after = of_block(*in.table, Block::after, measure);
    e.cold = of_block(*in.table, Block::cold, measure);
    if (e.before.empty() && e.after.empty() && e.cold.empty()) return std::nullopt;
    e.is_aim = in.lesson.aim && in.lesson.aim->measure.value == measure;
    e.estimated = !in.table->measured[static_cast<std::size_t>(measure)];
    const Counted before = counted(e.before, measure), after = counted(e.after, measure),
                  cold = counted(e.cold, measure);
    e.change = measure::compare(before.values, after.values, wanted_of(in, measure), before.aside,
                                after.aside);
    if (!e.cold.empty()) e.cold_sample = measure::describe(cold.values, cold.aside);
    return e;
}

} // namespace

page::Story tell(const Inputs& in, diag::Findings& findings) {
    page::Story story{.lesson = in.lesson, .table = in.table};
    if (in.table) {
        for (const auto& row : unit::measures)
            if (auto e = evidence_of(in, row.measure)) story.evidence.push_back(std::move(*e));
        std::stable_partition(story.evidence.begin(), story.evidence.end(),
                              std::mem_fn(&Evidence::is_aim));
    }
    // A cold block belongs to the change of the lesson before: only its record can say what was
    // kept.
    tell_last(story, in, findings);
    tell_hold(story, findings);
    tell_ball(story, in.clubs, in.speaker);
    choose_drills(story, in, findings);
    return story;
}

} // namespace report
