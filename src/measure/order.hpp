// Order statistics on plain vectors.
#pragma once

#include <span>
#include <vector>

namespace measure {

/// Of ascending values; 0 for none. `part` from 0 to 1, linear between ranks (R type 7).
double quantile_of_sorted(std::span<const double> sorted, double part);

/// The middle value, or halfway between the middle two; 0 for none. Reorders `values`.
double median_in_place(std::span<double> values);
double median_of(std::span<const double> values);

/// 1.4826 times the median of absolute values: the standard deviation of normal residuals.
/// Reorders and overwrites `residuals`.
double robust_spread(std::span<double> residuals);

} // namespace measure
