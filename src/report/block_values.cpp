#include "report/block_values.hpp"

#include <algorithm>
#include <iterator>

namespace report {

std::vector<shots::Shot> of_block(const shots::Table& table, shots::Block block,
                                  unit::Measure measure) {
    std::vector<shots::Shot> out;
    std::ranges::copy_if(table.shots, std::back_inserter(out), [&](const shots::Shot& shot) {
        return shot.block == block && shot[measure].has_value();
    });
    return out;
}

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

} // namespace report
