// The shots of one block and the values that count.
#pragma once

#include "shots/table.hpp"

#include <vector>

namespace report {

/// Shots of that block in which the measure has a value, in order, set-aside ones too.
std::vector<shots::Shot> of_block(const shots::Table& table, shots::Block block,
                                  unit::Measure measure);

struct Counted {
    std::vector<double> values;
    std::size_t aside = 0;
};
Counted counted(const std::vector<shots::Shot>& shots, unit::Measure measure);

} // namespace report
