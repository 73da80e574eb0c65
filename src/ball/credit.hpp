// Whose doing it was: the change in start direction, curve, carry and offline shared out among
// face, path, effective loft, speed and strike.
//
// The model is the impact of impact.hpp and the flight of flight.hpp, fitted to the medians of the
// student's own shots before and after:
//  - strike: in each block the ball speed over what a centred strike would give, so the modelled
//    ball speed is the measured one in both blocks;
//  - horizontal share of the face: least squares over the two medians' start directions, kept
//    within the published 0.61 to 0.83. Only when face, path and start are measured and one
//    block's face to path is 1.5 degrees or more (the filter of Wood, Henrikson & Broadie 2018);
//    otherwise, or when the head has a share of its own, that of the geometry or of the head;
//  - offset: for each outcome the measured level less the modelled one, mean of both blocks. It
//    plays no part in a change.
// Path means the direction in which the club moves: path and attack together.
// Shares add up to the modelled change; the rest is measured change less modelled change.
#pragma once

#include "ball/air.hpp"
#include "ball/impact.hpp"

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>

namespace ball {

enum class Factor : std::uint8_t { face, path, loft, speed, strike };
inline constexpr std::size_t factor_count = 5;

/// Start in degrees, the others in metres; right of target positive where sided.
enum class Outcome : std::uint8_t { start, curve, carry, offline };
inline constexpr std::size_t outcome_count = 4;

/// What a table says of one shot.
struct Shot {
    std::optional<unit::Degrees> face, path, loft, attack;
    std::optional<unit::MetresPerSecond> club_speed, ball_speed;
    std::optional<unit::Degrees> start;
    std::optional<unit::Metres> curve, carry, offline;
};

/// The surroundings, and where the model stands for what the table lacks.
struct Setting {
    Head head;
    Air air;
    unit::Degrees loft;   ///< held in both blocks when no loft was measured
    unit::Degrees attack; ///< held in both blocks when no attack was measured
};

struct Resampling {
    std::size_t count = 1000; ///< 0: no ranges
    double level = 0.80;      ///< of the percentile intervals
    std::uint64_t seed = 20021;
    /// Fly every coalition of every resample, instead of reading the model off its parabolas along
    /// the medians (credit_surface.hpp). Thirty times the work; for tests.
    bool fly_all = false;
};

struct Range {
    double lower = 0, upper = 0;
};

struct Part {
    double value = 0;
    std::optional<Range> range; ///< absent without resampling or below five shots a side
};

struct OutcomeCredit {
    std::optional<Part> measured; ///< change of the medians; absent when not in the table
    std::optional<Part> modelled; ///< absent without any speed, but for the start direction
    std::array<std::optional<Part>, factor_count> shares; ///< absent where not measured
    std::optional<Part> rest;                             ///< measured less modelled
    std::optional<bool> fits; ///< the rest is at most half of the measured change
    std::optional<double> offset;
};

enum class ShareOrigin : std::uint8_t { given, fitted, geometry };

struct Credit {
    /// A factor is measured when at least half of the shots of both blocks have it.
    std::array<bool, factor_count> measured{};
    /// No club speed in the table: speed is read from the ball, and strike cannot be told from it.
    bool speed_from_ball = false;
    std::array<OutcomeCredit, outcome_count> outcomes;
    double face_share = 0; ///< horizontal, of the after block
    ShareOrigin share_origin = ShareOrigin::geometry;

    const OutcomeCredit& operator[](Outcome o) const {
        return outcomes[static_cast<std::size_t>(o)];
    }
};

/// Empty when a block has no shots or neither face nor path nor speed was measured. The same input
/// gives the same bits.
std::optional<Credit> credit(std::span<const Shot> before, std::span<const Shot> after,
                             const Setting& setting, const Resampling& resampling = {});

} // namespace ball
