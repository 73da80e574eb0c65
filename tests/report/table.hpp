// A shot table made from the impact and flight models, so that what a story should tell is known.
#pragma once

#include "../drills/stock.hpp"
#include "ball/flight.hpp"
#include "ball/impact.hpp"
#include "shots/table.hpp"

#include <cmath>
#include <vector>

namespace table {

using unit::Measure;

struct Shots {
    double face = 0, path = 0, loft = 26, speed = 34;
    int count = 10;
};

inline ball::Head seven_iron() {
    ball::Head head;
    head.mass = ball::common_head_mass({32});
    return head;
}

inline void put(shots::Shot& shot, Measure m, double value) {
    shot.values[static_cast<std::size_t>(m)] = value;
}

/// Shots about the middle one, evenly either side, so that medians are the middle.
inline void add(shots::Table& table, shots::Block block, const Shots& shots) {
    for (int i = 0; i < shots.count; ++i) {
        const double off = i - (shots.count - 1) / 2.0;
        const ball::Delivery d{{shots.face + 0.2 * off},
                               {shots.path + 0.1 * off},
                               {-4},
                               {shots.loft + 0.1 * off},
                               {shots.speed + 0.05 * off}};
        const auto launch = ball::strike(d, seven_iron());
        const auto flight = ball::fly(launch, {});
        shots::Shot shot;
        shot.number = static_cast<int>(table.shots.size()) + 1;
        shot.block = block;
        put(shot, Measure::face, d.face.value);
        put(shot, Measure::path, d.path.value);
        put(shot, Measure::loft, d.loft.value);
        put(shot, Measure::attack, d.attack.value);
        put(shot, Measure::club_speed, d.club_speed.value);
        put(shot, Measure::ball_speed, launch.speed.value);
        put(shot, Measure::launch, launch.elevation.value);
        put(shot, Measure::start, launch.start.value);
        put(shot, Measure::curve, flight.curve.value);
        put(shot, Measure::carry, flight.carry.value);
        put(shot, Measure::offline, flight.offline.value);
        table.shots.push_back(shot);
    }
    for (const auto& row : unit::measures)
        table.measured[static_cast<std::size_t>(row.measure)] = true;
}

inline shots::Table of(const Shots& before, const Shots& after) {
    shots::Table out;
    add(out, shots::Block::before, before);
    add(out, shots::Block::after, after);
    return out;
}

inline void forget(shots::Table& table, Measure m) {
    for (auto& shot : table.shots)
        shot.values[static_cast<std::size_t>(m)].reset();
    table.measured[static_cast<std::size_t>(m)] = false;
}

inline void mirror(shots::Table& table) {
    for (auto& shot : table.shots)
        for (const auto& row : unit::measures)
            if (auto& value = shot.values[static_cast<std::size_t>(row.measure)];
                value && row.sided)
                value = -*value;
}

/// The typical bag of the checkout.
inline const std::vector<drills::TypicalClub>& clubs() {
    static const diag::Source source("typical.yaml",
                                     stock::read_file(SOURCE_DIR "/templates/clubs/typical.yaml"));
    static const std::vector<drills::TypicalClub> all = [] {
        diag::Findings findings;
        return drills::read_clubs(source, findings);
    }();
    return all;
}

} // namespace table
