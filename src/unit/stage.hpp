// How far a student has come with one drill.
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

namespace unit {

/// Without a ball, then half swings or a net, then a target and the normal routine.
enum class Stage : std::uint8_t { place, blend, play };

inline constexpr std::array<std::string_view, 3> stage_words{"place", "blend", "play"};

} // namespace unit
