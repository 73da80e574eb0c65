// The model of credit.hpp for one pair of medians: every coalition's outcomes.
#pragma once

#include "ball/credit.hpp"
#include "ball/medians.hpp"

#include <array>
#include <optional>

namespace ball {

inline constexpr std::size_t coalition_count = 1u << factor_count;

/// Which columns both blocks have.
using Present = std::array<bool, column_count>;

/// Worth of each coalition for each outcome: bit i set means factor i as after, else as before.
struct Worths {
    std::array<std::array<double, coalition_count>, outcome_count> outcome{};
    double face_share = 0;
    ShareOrigin share_origin = ShareOrigin::geometry;
};

std::array<bool, factor_count> factors_measured(const Present& present);

/// True when there is a speed to fly with.
bool has_speed(const Present& present);

/// Least squares of start - path on face - path over the two medians; nothing without them, or with
/// too little face to path to fit.
std::optional<double> fitted_share(const Medians& a, const Medians& b, const Present& present);

Worths worths(const Medians& before, const Medians& after, const Present& present,
              const Setting& setting);

} // namespace ball
