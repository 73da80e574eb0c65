// Drag, lift and spin decay of a golf ball: one published model from driver to wedge.
#pragma once

#include "ball/head.hpp"
#include "unit/quantity.hpp"

#include <algorithm>

namespace ball {

struct Coefficients {
    double drag = 0, lift = 0;
};

/// Coefficients by spin parameter S = spin times radius over air speed.
/// Source: Naruo, Mizota & Shimozono 2004, Transactions JSME B 70(697):2371, S 0.03 to 1.13,
/// Reynolds 7.09e4 to 1.25e5. Guards of our own: below 0.03 the lift falls straight to none (the
/// polynomial would leave 0.06 without spin); above 1.13 both stay where they are.
struct Dimples {
    static constexpr double least_spin = 0.03, most_spin = 1.13;

    constexpr Coefficients operator()(double s, double /*speed*/) const {
        const double d = s < most_spin ? s : most_spin;
        const double l = d > least_spin ? d : least_spin;
        return {(((0.7510 * d - 1.760) * d + 1.098) * d + 0.2148) * d + 0.2049,
                ((((-0.2158 * l + 1.006) * l - 1.644) * l + 1.250) * l + 0.0616) * (d / l)};
    }
};

/// Part of the spin lost per second per m/s of air speed: 2.0e-5 / radius.
/// Source: Smits & Smith 1994 (Science and Golf II, 340-347), as used by Penner 2001.
inline constexpr double spin_decay = 2.0e-5 / ball_radius.value;

/// The time in which spin falls to 1/e at a steady speed.
constexpr unit::Seconds spin_time(unit::MetresPerSecond speed) {
    return {1 / (spin_decay * speed.value)};
}

/// Below this Reynolds number at launch real balls may lose their lift: the model claims nothing.
inline constexpr double least_reynolds = 7.0e4;

} // namespace ball
