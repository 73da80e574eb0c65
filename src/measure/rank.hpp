// Null distributions of the two rank statistics, and how many ordered pairs an interval leaves out.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

namespace measure {

double normal_at_most(double z);     ///< standard normal, P(Z <= z)
double normal_quantile(double part); ///< its inverse, 0 < part < 1

/// Ordered pair values an interval leaves out at each end, and the level it then holds.
struct Cut {
    std::size_t outside = 0;
    double level = 0;
};

/// The distribution of a rank statistic when nothing changed: whole numbers from 0 to `top`,
/// symmetric about the middle. Counted in whole 128-bit numbers, so exact, as long as the number
/// of arrangements stays under 2^126: 60 a side for the rank sum (and lopsided pairs such as 20
/// against 300), 126 for the signed rank. Beyond, normal with half a step of correction.
class RankNull {
  public:
    /// Mann-Whitney U of m against n values.
    static RankNull rank_sum(std::size_t m, std::size_t n);
    /// Wilcoxon V of n differences.
    static RankNull signed_rank(std::size_t n);

    double at_most(std::size_t value) const; ///< P(statistic <= value)
    /// The narrowest symmetric interval that holds `level`; empty when even the widest does not.
    std::optional<Cut> cut(double level) const;
    std::size_t top() const { return top_; }
    bool exact() const { return !lower_half_.empty(); }

  private:
    std::size_t top_ = 0;
    double sd_ = 0;
    std::vector<double> lower_half_; ///< P(statistic <= i) for i up to top / 2
};

} // namespace measure
