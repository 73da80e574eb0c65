// An invented lesson: forty shots with a seven-iron that the model itself makes, with fixed
// scatter.
#pragma once

#include "ball/credit.hpp"
#include "ball/flight.hpp"

#include <vector>

namespace lesson {

inline ball::Head seven_iron() {
    ball::Head head;
    head.mass = ball::common_head_mass({34});
    return head;
}

inline ball::Setting setting() { return {seven_iron(), {}, {28}, {-4}}; }

/// The number of that shot between -1 and 1, the same every time.
inline double scatter(std::size_t shot, std::size_t column) {
    return static_cast<double>((shot * 37 + column * 61 + shot * shot * 13) % 101) / 50 - 1;
}

/// A shot with everything measured; `strike` is ball speed over that of a centred strike.
inline ball::Shot shot(const ball::Delivery& d, double strike, const ball::Setting& s) {
    ball::Launch launch = ball::strike(d, s.head);
    launch.speed = launch.speed * strike;
    const ball::Flight f = ball::fly(launch, s.air);
    return {d.face,       d.path,       d.loft,  d.attack, d.club_speed,
            launch.speed, launch.start, f.curve, f.carry,  f.offline};
}

inline std::vector<ball::Shot> block(const ball::Delivery& middle, double strike,
                                     std::size_t count = 20, double spread = 1) {
    std::vector<ball::Shot> shots;
    for (std::size_t i = 0; i < count; ++i) {
        ball::Delivery d = middle;
        d.face.value += 2 * spread * scatter(i, 0), d.path.value += 1.5 * spread * scatter(i, 1);
        d.loft.value += spread * scatter(i, 2), d.attack.value += spread * scatter(i, 3);
        d.club_speed.value += spread * scatter(i, 4);
        shots.push_back(shot(d, strike + 0.02 * spread * scatter(i, 5), setting()));
    }
    return shots;
}

inline const ball::Delivery open_face{{6}, {-3}, {-3.5}, {31}, {36}};
inline const ball::Delivery square_face{{1}, {-1}, {-4}, {28}, {37}};

} // namespace lesson
