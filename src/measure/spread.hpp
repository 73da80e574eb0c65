// Spread in the plane, for the scatter, and single values far from their block.
#pragma once

#include <span>
#include <vector>

namespace measure {

/// Means and n - 1 covariances of paired values.
struct Cloud {
    double x = 0, y = 0;           ///< the means
    double xx = 0, xy = 0, yy = 0; ///< variances and covariance; 0 for fewer than two
};
/// Of as many pairs as the shorter side has.
Cloud cloud(std::span<const double> xs, std::span<const double> ys);

/// An ellipse about a centre.
struct Ellipse {
    double x = 0, y = 0;
    double major = 0, minor = 0; ///< semi-axes, never negative
    double angle = 0;            ///< of the major axis against x, degrees in (-90, 90]
};
/// The ellipse that holds `part` (0 <= part < 1) of normal shots with this covariance:
/// semi-axes sqrt(q * eigenvalue), q = -2 ln(1 - part), the chi-square quantile of two degrees.
Ellipse ellipse(const Cloud& cloud, double part);

/// 0.6745 (x - median) / MAD for each value (Iglewicz & Hoaglin 1993). When more than half of the
/// values are equal, (x - median) / (1.2533 mean absolute deviation); zeros when all are.
std::vector<double> modified_z(std::span<const double> values);
/// The size from which Iglewicz & Hoaglin call a value a likely outlier: |z| > 3.5.
inline constexpr double far_off = 3.5;

} // namespace measure
