// The model of credit.hpp around one pair of medians, read off instead of flown.
#pragma once

#include "ball/credit_model.hpp"

#include <vector>

namespace ball {

inline constexpr std::array<Column, outcome_count> outcome_columns{start_column, curve_column,
                                                                   carry_column, offline_column};

/// The numbers of one outcome for one pair of medians.
struct Sums {
    double measured = 0, modelled = 0;
    std::array<double, factor_count> shares{};

    double rest() const { return measured - modelled; }
};
using AllSums = std::array<Sums, outcome_count>;

AllSums sums(const Medians& before, const Medians& after, const Worths& w);

/// Medians of both blocks.
struct Pair {
    Medians before{}, after{};
};

/// A parabola along each median that the model reads and along the fitted face share, each through
/// the model itself at the middle and one standard deviation of the drawn pairs to either side, and
/// how share and median act together. Forty models in place of one a resample; tests/ball holds
/// the ranges to those of the model flown for every resample.
class Surface {
  public:
    /// `drawn`: at least one.
    Surface(const Pair& middle, const Present& present, const Setting& setting,
            const std::vector<Pair>& drawn);

    AllSums at(const Pair& pair) const;

  private:
    struct Response {
        std::size_t column = 0;
        bool after = false;
        double step = 0;
        AllSums slope{}, bend{}, with_share{};
    };
    Pair middle_;
    Present present_;
    AllSums sums_;
    std::optional<double> share_;
    Response of_share_;
    std::vector<Response> responses_;
};

} // namespace ball
