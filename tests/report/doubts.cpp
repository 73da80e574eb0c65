// No series that the physics gives is doubted, and each swap of two columns in it is.
#include "ball/flight.hpp"
#include "shots/read_table.hpp"

#include <catch2/catch.hpp>

#include <string>

namespace {

using unit::Measure;

struct Club {
    std::string name;
    double loft, speed; ///< degrees, the fastest usual m/s
};
const std::vector<Club> bag{
    {"driver", 10.5, 54},       {"three wood", 15, 50}, {"four hybrid", 22, 47},
    {"five iron", 25, 44},      {"seven iron", 32, 41}, {"nine iron", 41, 38},
    {"pitching wedge", 46, 36}, {"sand wedge", 56, 33}, {"lob wedge", 60, 30}};

void set(shots::Table& table, shots::Shot& shot, Measure m, double value) {
    shot.values[static_cast<std::size_t>(m)] = value;
    table.measured[static_cast<std::size_t>(m)] = true;
}

/// One strike off the centre or not, through that air, as a row of the table.
shots::Shot hit(shots::Table& table, const ball::Delivery& d, double strike, const ball::Air& air) {
    ball::Launch launch = ball::strike(d, {ball::common_head_mass(d.loft)});
    launch.speed = launch.speed * strike;
    const auto flight = ball::fly(launch, air);
    shots::Shot shot;
    set(table, shot, Measure::face, d.face.value);
    set(table, shot, Measure::path, d.path.value);
    set(table, shot, Measure::club_speed, d.club_speed.value);
    set(table, shot, Measure::ball_speed, launch.speed.value);
    set(table, shot, Measure::launch, launch.elevation.value);
    set(table, shot, Measure::start, launch.start.value);
    set(table, shot, Measure::carry, flight.carry.value);
    set(table, shot, Measure::offline, flight.offline.value);
    return shot;
}

/// Six shots around one way of hitting it: `part` of the full speed.
shots::Table series(const Club& club, double part, double face, double path, double attack,
                    double wind) {
    shots::Table table;
    for (int i = 0; i < 6; ++i) {
        const double off = (i - 2.5) / 2.5; // -1 to 1
        const ball::Delivery d{{face + 2 * off},
                               {path - off},
                               {attack + off},
                               {club.loft - 3 * off},
                               {club.speed * part * (1 + 0.03 * off)}};
        table.shots.push_back(hit(table, d, 0.92 + 0.08 * off, {{0}, {}, {}, {{wind}, {}}}));
        table.shots.back().number = i + 1;
        table.shots.back().block = i < 3 ? shots::Block::before : shots::Block::after;
    }
    return table;
}

std::string doubts(const shots::Table& table, const std::string& club) {
    const diag::Source source("shots.csv", std::string(20, '\n'));
    diag::Findings findings;
    shots::check_plausible(table, source, findings, club);
    return diag::print_all(findings);
}

shots::Table swapped(shots::Table table, Measure a, Measure b) {
    for (auto& shot : table.shots)
        std::swap(shot.values[static_cast<std::size_t>(a)],
                  shot.values[static_cast<std::size_t>(b)]);
    return table;
}

} // namespace

TEST_CASE("no series that the physics gives is doubted") {
    int tables = 0;
    for (const auto& club : bag)
        for (const double part : {0.5, 0.75, 1.0})
            for (const double face : {-9.0, 0.0, 9.0})
                for (const double path : {-6.0, 0.0, 6.0})
                    for (const double wind : {-8.0, 0.0, 6.0}) {
                        const double attack = club.loft < 12 ? 2 : -4;
                        for (const bool launch : {true, false}) {
                            auto table = series(club, part, face, path, attack, wind);
                            for (auto& shot : table.shots)
                                if (!launch)
                                    shot.values[static_cast<std::size_t>(Measure::launch)] = {};
                            INFO(club.name << " " << part << " face " << face << " path " << path
                                           << " wind " << wind << " launch " << launch);
                            CHECK(doubts(table, club.name) == "");
                            ++tables;
                        }
                    }
    CHECK(tables == 9 * 3 * 3 * 3 * 3 * 2);
}

TEST_CASE("columns in each other's place are doubted, once") {
    for (const auto& club : bag) {
        const auto table = series(club, 0.9, 6, -2, club.loft < 12 ? 2 : -4, 0);
        INFO(club.name);
        const auto landing = doubts(swapped(table, Measure::carry, Measure::offline), club.name);
        CHECK(landing.find("'offline' is larger than 'carry' in 6 of 6 shots") !=
              std::string::npos);
        CHECK(landing.find("warning", landing.find("warning") + 1) == std::string::npos);
        if (club.loft < 40) { // behind a steep face the ball is hardly faster than the club
            const auto speeds =
                doubts(swapped(table, Measure::club_speed, Measure::ball_speed), club.name);
            CHECK(speeds.find("slower than the club") != std::string::npos);
            CHECK(speeds.find("warning", speeds.find("warning") + 1) == std::string::npos);
        }
        if (club.loft > 20) { // a driver launches about where its ball starts
            const auto starts = doubts(swapped(table, Measure::launch, Measure::start), club.name);
            CHECK(starts.find("have 'start' and 'launch' changed places?") != std::string::npos);
        }
    }
}

TEST_CASE("one wrong side letter is doubted, from the first one on") {
    for (const auto& club : bag) {
        if (club.loft > 45) continue;
        const auto right = series(club, 0.9, 7, 3, club.loft < 12 ? 2 : -4, 0);
        CHECK(doubts(right, club.name) == "");
        const auto turned = [&](Measure m) {
            auto table = right;
            auto& value = table.shots[3].values[static_cast<std::size_t>(m)];
            *value = -*value;
            return doubts(table, club.name);
        };
        INFO(club.name);
        CHECK(turned(Measure::start).find("far outside") != std::string::npos);
        CHECK(turned(Measure::offline).find("'offline' is on the other") != std::string::npos);
    }
}

TEST_CASE("a carry in feet that is in yards is doubted for every full swing") {
    for (const auto& club : bag) {
        auto table = series(club, 1, 2, 0, club.loft < 12 ? 2 : -4, 0);
        for (auto& shot : table.shots)
            *shot.values[static_cast<std::size_t>(Measure::carry)] /= 3;
        INFO(club.name);
        CHECK(doubts(table, club.name).find("much shorter than a ball of that speed") !=
              std::string::npos);
    }
}
