// What can be measured of one shot: the columns of a shot table and the rows of an evidence page.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <string_view>

namespace unit {

/// The hand a player plays from. A right-hander's lead hand is the left one.
enum class Hand : std::uint8_t { right, left };

/// One measure of one shot, in the order in which pages list them.
enum class Measure : std::uint8_t {
    face,       ///< face angle at impact, degrees, right of target positive
    path,       ///< club path at impact, degrees, right positive
    face_path,  ///< face minus path, degrees, right positive
    loft,       ///< effective loft: elevation of the face normal at impact, degrees
    attack,     ///< attack angle, degrees, up positive
    club_speed, ///< club speed before impact, m/s
    ball_speed, ///< ball speed after impact, m/s
    launch,     ///< launch elevation, degrees, up positive
    start,      ///< start direction, degrees, right positive
    spin,       ///< spin, rpm
    axis,       ///< tilt of the spin axis, degrees, positive curves right
    curve,   ///< sideways distance of the landing spot from the start line, metres, right positive
    carry,   ///< carry, metres
    offline, ///< sideways distance of the landing spot from the target line, metres, right positive
    apex,    ///< greatest height, metres
    landing, ///< landing angle, degrees below the horizontal
    strike,  ///< strike point across the face, millimetres from the centre, toe positive
};
inline constexpr std::size_t measure_count = 17;

/// The dimension of a measure.
enum class Kind : std::uint8_t { angle, speed, length, spin, small_length };

struct MeasureRow {
    Measure measure;
    std::string_view key; ///< the word in records, tables and `numbers`
    Kind kind;
    bool sided; ///< true when the sign means right or left of the target
};

/// One row a measure; the index is the enumerator.
inline constexpr std::array<MeasureRow, measure_count> measures{{
    {Measure::face, "face", Kind::angle, true},
    {Measure::path, "path", Kind::angle, true},
    {Measure::face_path, "face to path", Kind::angle, true},
    {Measure::loft, "loft", Kind::angle, false},
    {Measure::attack, "attack", Kind::angle, false},
    {Measure::club_speed, "club speed", Kind::speed, false},
    {Measure::ball_speed, "ball speed", Kind::speed, false},
    {Measure::launch, "launch", Kind::angle, false},
    {Measure::start, "start", Kind::angle, true},
    {Measure::spin, "spin", Kind::spin, false},
    {Measure::axis, "axis", Kind::angle, true},
    {Measure::curve, "curve", Kind::length, true},
    {Measure::carry, "carry", Kind::length, false},
    {Measure::offline, "offline", Kind::length, true},
    {Measure::apex, "apex", Kind::length, false},
    {Measure::landing, "landing", Kind::angle, false},
    {Measure::strike, "strike", Kind::small_length, false},
}};

constexpr const MeasureRow& row(Measure m) { return measures[static_cast<std::size_t>(m)]; }

/// The measure of that key, spelt exactly; spaces, '-' and '_' count alike.
std::optional<Measure> measure_named(std::string_view key);

} // namespace unit
