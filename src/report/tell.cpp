#include "report/tell.hpp"

#include "report/tell_ball.hpp"
#include "report/tell_hold.hpp"

#include <algorithm>

namespace report {

namespace {

using page::Evidence;
using shots::Block;

/// Different clubs in the two blocks cannot be compared.
std::vector<shots::Shot> of_block(const shots::Table& table, Block block, unit::Measure measure) {
    std::vector<shots::Shot> out;
    std::ranges::copy_if(table.shots, std::back_inserter(out), [&](const shots::Shot& shot) {
        return shot.block == block && shot[measure].has_value();
    });
    return out;
}

struct Counted {
    std::vector<double> values;
    std::size_t aside = 0;
};

Counted counted(const std::vector<shots::Shot>& shots, unit::Measure measure) {
    Counted out;
    for (const auto& shot : shots) {
        if (shot.set_aside.empty())
            out.values.push_back(*shot[measure]);
        else
            ++out.aside;
    }
    return out;
}

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

void choose_drills(page::Story& story, const Inputs& in, diag::Findings& findings) {
    std::vector<std::string_view> known;
    for (const auto& drill : in.library)
        known.push_back(drill.id);
    for (const auto& wish : in.lesson.drills) {
        if (const auto* drill = drills::find(in.library, wish.id.value)) {
            story.drills.push_back({*drill, wish, false, {}});
            continue;
        }
        const auto near = diag::nearest(wish.id.value, known);
        findings.error(
            wish.id.span, "no drill is called '" + wish.id.value + "'",
            near.empty()
                ? "name a drill of the library, such as H1, or write your own in drills.yaml"
                : "did you mean '" + std::string(near) + "'?");
    }
}

} // namespace

page::Story tell(const Inputs& in, diag::Findings& findings) {
    page::Story story{.lesson = in.lesson, .table = in.table};
    if (in.table) {
        for (const auto& row : unit::measures)
            if (auto e = evidence_of(in, row.measure)) story.evidence.push_back(std::move(*e));
        std::ranges::stable_partition(story.evidence, &Evidence::is_aim);
    }
    // A cold block of this record may belong to an earlier lesson's change, and the table does not
    // say which: what was kept is told only where several lessons stand together.
    tell_hold(story, findings);
    tell_ball(story, in.clubs, in.speaker);
    choose_drills(story, in, findings);
    return story;
}

} // namespace report
