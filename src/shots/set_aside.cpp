#include "shots/read_table.hpp"

#include <algorithm>

namespace shots {

namespace {

bool same_block(const Shot& a, const Shot& b) { return a.block == b.block && a.extra == b.extra; }

/// The median of the block of `shot`, shots set aside by hand left out.
double block_median(const Table& table, const Shot& shot, unit::Measure measure,
                    const std::vector<bool>& flagged) {
    std::vector<double> values;
    for (std::size_t i = 0; i < table.shots.size(); ++i)
        if (!flagged[i] && same_block(table.shots[i], shot) && table.shots[i][measure])
            values.push_back(*table.shots[i][measure]);
    if (values.empty()) return 0;
    std::ranges::sort(values);
    const std::size_t half = values.size() / 2;
    return values.size() % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
}

struct BlockMedian {
    Block block;
    std::string extra;
    double value;
};

void apply(Table& table, const record::SetAsideRule& rule, const std::vector<bool>& flagged) {
    std::vector<BlockMedian> medians;
    for (Shot& shot : table.shots) {
        const auto value = shot[rule.measure];
        if (!shot.set_aside.empty() || !value) continue;
        double limit = rule.limit;
        if (rule.of_block_median) {
            auto known = std::ranges::find_if(medians, [&](const BlockMedian& m) {
                return m.block == shot.block && m.extra == shot.extra;
            });
            if (known == medians.end())
                known = medians.insert(known, {shot.block, shot.extra,
                                               block_median(table, shot, rule.measure, flagged)});
            limit *= known->value;
        }
        if (rule.below ? *value < limit : *value > limit) shot.set_aside = rule.text;
    }
}

} // namespace

void set_aside(Table& table, const std::vector<record::SetAsideRule>& rules,
               diag::Findings& findings) {
    std::vector<bool> flagged;
    for (const Shot& shot : table.shots)
        flagged.push_back(!shot.set_aside.empty());
    for (const record::SetAsideRule& rule : rules) {
        const auto has = [&](const Shot& shot) { return shot[rule.measure].has_value(); };
        if (!std::ranges::any_of(table.shots, has)) {
            findings.warning(rule.span,
                             "this rule sets nothing aside: the table has no '" +
                                 std::string(unit::row(rule.measure).key) + "'",
                             "use a measure that the table has, or take the rule away");
            continue;
        }
        apply(table, rule, flagged);
    }
}

} // namespace shots
