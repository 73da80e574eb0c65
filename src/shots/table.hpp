// The shot table as typed rows: what the device or the coach wrote, in SI and right-positive.
#pragma once

#include "diag/source.hpp"
#include "unit/measure.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace shots {

/// Which part of the lesson a shot belongs to. `warmup` is drawn nowhere and counted nowhere.
enum class Block : std::uint8_t { before, after, cold, warmup, extra };

struct Shot {
    int number = 0; ///< as in the table, else its place in the table from 1
    Block block = Block::before;
    std::string extra; ///< the name of an extra block
    std::string club;  ///< as written, empty when the table names none
    std::array<std::optional<double>, unit::measure_count>
        values;             ///< metres, m/s, degrees, rpm, mm
    std::string set_aside;  ///< why it is set aside; empty when it counts
    std::uint32_t line = 0; ///< in the file
    /// Byte offset of each cell in the file, 0 for what the table does not write.
    std::array<std::uint32_t, unit::measure_count> place{};

    std::optional<double> operator[](unit::Measure m) const {
        return values[static_cast<std::size_t>(m)];
    }
};

struct Table {
    std::vector<Shot> shots;
    /// Smallest step in which the table writes a measure (0.1 for one decimal), in SI; 0 when
    /// absent.
    std::array<double, unit::measure_count> step{};
    /// True for measures the table itself has (face to path and curve may be derived from others).
    std::array<bool, unit::measure_count> measured{};
};

/// The clubs named in the blocks `before` and `after`, each once, in the order of the table. More
/// than one: the blocks are not compared.
std::vector<std::string> clubs_compared(const Table& table);

} // namespace shots
