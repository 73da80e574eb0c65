#include "shots/read_table.hpp"

#include <algorithm>

namespace shots {

void check_aim(const Table& table, const record::Aim& aim, diag::Findings& findings) {
    const unit::Measure measure = aim.measure.value;
    const auto has = [&](Block block) {
        return std::ranges::any_of(
            table.shots, [&](const Shot& shot) { return shot.block == block && shot[measure]; });
    };
    const bool before = has(Block::before), after = has(Block::after);
    if (table.shots.empty() || (before && after)) return;
    std::string what = "the table has no " + diag::quote(unit::row(measure).key);
    if (before || after) what += before ? " after the change" : " before the change";
    what += ", so the aim gets no verdict";
    findings.warning(aim.measure.span, std::move(what),
                     before || after
                         ? "check the blocks of the shots under 'shots' in the record"
                         : "name its column under 'shots: columns', or aim at a measure "
                           "that the table has");
}

} // namespace shots
