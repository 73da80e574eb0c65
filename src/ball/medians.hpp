// Medians of the columns of one block, of all its shots or of shots drawn from it.
#pragma once

#include "ball/credit.hpp"

#include <array>
#include <cstdint>
#include <random>
#include <span>
#include <vector>

namespace ball {

/// Columns of a Shot, in its order; SI and degrees.
enum Column : std::size_t {
    face_column,
    path_column,
    loft_column,
    attack_column,
    club_speed_column,
    ball_speed_column,
    start_column,
    curve_column,
    carry_column,
    offline_column,
    column_count
};

using Medians = std::array<double, column_count>;

class Block {
  public:
    explicit Block(std::span<const Shot> shots);

    std::size_t size() const { return shots_; }
    /// At least half of the shots have it.
    bool has(Column c) const { return 2 * columns_[c].size() >= shots_ && !columns_[c].empty(); }

    /// 0 for a column without values.
    const Medians& medians() const { return medians_; }

    /// Medians of as many whole shots drawn with replacement. Where none of the drawn shots has a
    /// value the block's own median stands.
    Medians draw(std::mt19937_64& random);

  private:
    struct Cell {
        double value;
        std::uint32_t shot;
    };
    std::size_t shots_;
    std::array<std::vector<Cell>, column_count> columns_; // each by rising value
    std::vector<std::uint32_t> times_;                    // how often each shot was drawn
    Medians medians_{};

    double median(Column c) const;
};

} // namespace ball
