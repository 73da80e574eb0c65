// The ball, and the club head as a declared input of the impact.
#pragma once

#include "unit/quantity.hpp"

#include <numbers>
#include <optional>
#include <string>

namespace ball {

// Limits of the Equipment Rules, Part 4 (R&A and USGA): at most 45.93 g, at least 42.67 mm.
inline constexpr unit::Kilograms ball_mass{0.04593};
inline constexpr unit::Metres ball_radius{0.021335};
inline constexpr double ball_area = std::numbers::pi * ball_radius.value * ball_radius.value; // m^2
inline constexpr double ball_inertia_factor = 0.4;  ///< uniform sphere: I = 0.4 m r^2
inline constexpr double standard_gravity = 9.80665; // m/s^2, 3rd CGPM 1901

/// Restitution along the face normal, falling with the speed of approach along it.
/// Source: Penner 2001, American Journal of Physics 69:563: e = 0.86 - 0.0029 v.
struct Restitution {
    double at_rest = 0.86;
    double per_mps = 0.0029;

    constexpr double at(unit::MetresPerSecond along_normal) const {
        return at_rest - per_mps * along_normal.value;
    }
};

/// How far toward the face, between path (0) and face (1), the ball starts, seen from above.
struct FaceShare {
    double value = 0;
    std::string source; ///< printed beside it
};

/// The published horizontal shares lie in this range (Wood, Henrikson & Broadie 2018,
/// Proceedings 2(6):249, abstract: "between 61 % and 83 %").
inline constexpr double least_published_share = 0.61;
inline constexpr double most_published_share = 0.83;

struct Head {
    unit::Kilograms mass{0.200};
    Restitution restitution;
    /// Tangential restitution: 0 rolls off the face; above 0 the ball grips and springs back
    /// (Cross & Dewhurst 2018). 0.1 puts the vertical launch share of driver, seven-iron and wedge
    /// inside the published intervals of Wood et al. 2018; it is not itself a published number.
    double tangential = 0.1;
    /// Sliding friction of cover on face: 0.40 urethane, 0.35 surlyn (Henrikson et al. 2020,
    /// Proceedings 49(1):27).
    double friction = 0.40;
    /// Takes the place of the share that follows from the geometry.
    std::optional<FaceShare> face_share;
};

/// Head mass by loft: 200 g at 10 degrees to 300 g at 56, straight lines between.
/// Common practice, no source.
unit::Kilograms common_head_mass(unit::Degrees loft);

} // namespace ball
