// Quantities with types, so that a speed cannot be added to a length. SI inside, angles in degrees.
// Signs: every sideways angle and length is positive to the right of the target, for everyone.
#pragma once

#include <compare>
#include <numbers>

namespace unit {

/// A number with a dimension. `Tag` keeps quantities of different kinds apart.
template <class Tag>
struct Quantity {
    double value = 0;

    friend constexpr auto operator<=>(Quantity, Quantity) = default;
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return {a.value + b.value}; }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return {a.value - b.value}; }
    friend constexpr Quantity operator-(Quantity a) { return {-a.value}; }
    friend constexpr Quantity operator*(Quantity a, double k) { return {a.value * k}; }
    friend constexpr Quantity operator*(double k, Quantity a) { return {a.value * k}; }
    friend constexpr Quantity operator/(Quantity a, double k) { return {a.value / k}; }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.value / b.value; }
};

using Degrees = Quantity<struct degrees_tag>;
using Metres = Quantity<struct metres_tag>;
using MetresPerSecond = Quantity<struct metres_per_second_tag>;
using Rpm = Quantity<struct rpm_tag>;
using Kilograms = Quantity<struct kilograms_tag>;
using Seconds = Quantity<struct seconds_tag>;
using Kelvin = Quantity<struct kelvin_tag>;
using Pascal = Quantity<struct pascal_tag>;

// Exact by definition (international yard and pound agreement, 1959; SI brochure, 9th edition).
inline constexpr double metres_in_a_yard = 0.9144;
inline constexpr double metres_in_a_foot = 0.3048;
inline constexpr double mps_in_a_mph = 0.44704;
inline constexpr double mps_in_a_kmh = 1.0 / 3.6;
inline constexpr double degrees_in_a_radian = 180.0 / std::numbers::pi;
inline constexpr double points_in_a_millimetre = 72.0 / 25.4;

constexpr double radians(Degrees angle) { return angle.value / degrees_in_a_radian; }
constexpr Degrees degrees(double radians) { return {radians * degrees_in_a_radian}; }

} // namespace unit
