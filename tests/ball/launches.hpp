// Launches that several tests share.
#pragma once

#include "ball/flight.hpp"

namespace launches {

inline ball::Launch of(double speed, double elevation, double rpm, double start, double axis) {
    return {{speed}, {elevation}, {start}, {rpm}, {axis}};
}

inline const ball::Air sea_level{}; // 1.225 kg/m^3
inline const ball::Launch drive = of(70, 12, 2700, 0, 0);
inline const ball::Launch fade = of(70, 12, 2700, 0, 8);
inline const ball::Launch iron = of(50, 17.5, 6800, -2, 5);
inline const ball::Launch wedge = of(42, 25.5, 9000, 0, 0);

} // namespace launches
