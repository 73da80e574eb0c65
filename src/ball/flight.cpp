#include "ball/flight.hpp"

#include <numbers>

namespace ball {

namespace {

constexpr double longest_flight = 30;    // s
constexpr double drawing_interval = 0.1; // s
constexpr double rpm_in_a_radian_per_second = 30 / std::numbers::pi;

Place seen(Vector v) { return {{v.x}, {-v.y}, {v.z}}; }

Landing landing(const Launch& launch, Vector spot) {
    const double start = unit::radians(launch.start);
    return {{std::hypot(spot.x, spot.y)},
            {-spot.y},
            {-spot.y * std::cos(start) - spot.x * std::sin(start)}};
}

void finish(Flight& flight, const Launch& launch, const Motion& end) {
    const Landing spot = landing(launch, end.place);
    flight.carry = spot.carry, flight.offline = spot.offline, flight.curve = spot.curve;
    flight.along = {end.place.x};
    flight.time = {end.time};
    flight.landing = -elevation(end.velocity);
    flight.landing_speed = {length(end.velocity)};
    flight.landing_spin = {end.spin * rpm_in_a_radian_per_second};
    flight.places.push_back(seen(end.place));
    flight.places.back().up = {0};
}

} // namespace

Departure departure(const Launch& launch) {
    const double start = unit::radians(launch.start), tilt = unit::radians(launch.axis);
    return {direction(launch.start, launch.elevation) * launch.speed.value,
            {-std::cos(tilt) * std::sin(start), -std::cos(tilt) * std::cos(start), -std::sin(tilt)},
            launch.spin.value / rpm_in_a_radian_per_second};
}

Forces forces(const Air& air) {
    Forces f;
    f.air_factor = density(air).value * ball_area / (2 * ball_mass.value);
    f.wind = {air.wind.along.value, -air.wind.across.value, 0};
    return f;
}

Flight fly(const Launch& launch, const Air& air, unit::Seconds step) {
    Flight flight;
    flight.below_range = reynolds(launch.speed, air) < least_reynolds;
    flight.places.push_back({});
    Lanes<1, Dimples> lane(forces(air), {});
    lane.depart(0, departure(launch));
    lane.begin();
    if (launch.elevation.value <= 0) return flight;
    double drawn = 0;
    for (double time = 0; time < longest_flight; time += step.value) {
        lane.step(step.value);
        if (lane.crossed_top(0)) flight.apex = {lane.inside(0, lane.zero_of(lane.vz, 0)).place.z};
        if (lane.crossed_ground(0)) {
            finish(flight, launch, lane.inside(0, lane.zero_of(lane.z, 0)));
            return flight;
        }
        if (time + step.value - drawn >= drawing_interval - 1e-9) {
            drawn = time + step.value;
            flight.places.push_back(seen(lane.inside(0, 1).place));
        }
    }
    finish(flight, launch, lane.inside(0, 1));
    return flight;
}

std::array<Landing, lane_count> land(const std::array<Launch, lane_count>& launches, const Air& air,
                                     unit::Seconds step) {
    Lanes<lane_count, Dimples> lanes(forces(air), {});
    std::array<Landing, lane_count> landings{};
    std::array<bool, lane_count> down{};
    std::size_t flying = 0;
    for (std::size_t i = 0; i < lane_count; ++i) {
        lanes.depart(i, departure(launches[i]));
        down[i] = launches[i].elevation.value <= 0;
        flying += !down[i];
    }
    lanes.begin();
    for (double time = 0; flying > 0 && time < longest_flight; time += step.value) {
        lanes.step(step.value);
        for (std::size_t i = 0; i < lane_count; ++i) {
            if (down[i] || !lanes.crossed_ground(i)) continue;
            landings[i] = landing(launches[i], lanes.inside(i, lanes.zero_of(lanes.z, i)).place);
            down[i] = true, --flying;
        }
    }
    return landings;
}

} // namespace ball
