#include "shots/read_table.hpp"

#include <algorithm>

namespace shots {

namespace {

void check_clubs(const Table& table, const record::Aim& aim, diag::Findings& findings) {
    const auto clubs = clubs_compared(table);
    if (clubs.size() < 2) return;
    const std::vector<std::string_view> named(clubs.begin(), clubs.end());
    std::string list = diag::either(named);
    if (const auto last = list.rfind(" or "); last != std::string::npos)
        list.replace(last, 4, " and ");
    findings.warning(aim.measure.span,
                     "the shots before and after were hit with different clubs, " + list +
                         ", so the aim gets no verdict",
                     "hit both blocks with one club, or give the shots of the other a block of "
                     "their own");
}

} // namespace

void check_aim(const Table& table, const record::Aim& aim, diag::Findings& findings) {
    const unit::Measure measure = aim.measure.value;
    const auto has = [&](Block block) {
        return std::ranges::any_of(
            table.shots, [&](const Shot& shot) { return shot.block == block && shot[measure]; });
    };
    const bool before = has(Block::before), after = has(Block::after);
    if (table.shots.empty()) return;
    if (before && after) return check_clubs(table, aim, findings);
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
