#include "launches.hpp"

#include <catch2/catch.hpp>

using namespace ball;
using namespace launches;

TEST_CASE("The reference shots come out to the printed digits") {
    // Reference: an independent fourth-order integration at 1 ms of the Naruo, Mizota & Shimozono
    // 2004 polynomials with Smits & Smith 1994 spin decay, density 1.225, lift along the unit
    // vector of axis x velocity, landing by a straight line.
    struct Row {
        Launch launch;
        double along, right, apex, time, landing, speed, spin;
    };
    const auto [l, along, right, apex, time, landing, speed, spin] = GENERATE(
        Row{of(70, 12, 2700, 0, 0), 231.528, 0, 29.372, 6.6335, 38.139, 28.200, 2152.8},
        Row{of(70, 12, 2700, 0, 8), 230.258, 14.049, 28.996, 6.5865, 37.814, 28.212, 2154.6},
        Row{of(70, 12, 2700, 3, -8), 230.677, -1.979, 28.996, 6.5865, 37.814, 28.212, 2154.6},
        Row{of(50, 17.5, 6800, 0, 0), 137.152, 0, 26.110, 5.8745, 46.887, 22.497, 5910.4},
        Row{of(50, 17.5, 6800, -2, 5), 137.050, 1.434, 26.009, 5.8630, 46.785, 22.488, 5911.2},
        Row{of(65, 8, 1800, 0, 0), 180.142, 0, 11.527, 4.3471, 20.724, 31.094, 1517.4});
    const Flight f = fly(l, sea_level, {0.001});
    CHECK(f.along.value == Approx(along).margin(6e-4));
    CHECK(f.offline.value == Approx(right).margin(6e-4));
    CHECK(f.apex.value == Approx(apex).margin(6e-4));
    CHECK(f.time.value == Approx(time).margin(6e-5));
    CHECK(f.landing.value == Approx(landing).margin(6e-4));
    CHECK(f.landing_speed.value == Approx(speed).margin(6e-4));
    CHECK(f.landing_spin.value == Approx(spin).margin(6e-2));
}

TEST_CASE("The reference wedge passes the clamp at 1.13 and differs from the bare polynomials") {
    // The reference (102.829 m, 5.3902 s, 50.508 degrees) was integrated without the guard.
    const auto bare = [](double s, double) {
        return Coefficients{(((0.7510 * s - 1.760) * s + 1.098) * s + 0.2148) * s + 0.2049,
                            (((-0.2158 * s + 1.006) * s - 1.644) * s + 1.250) * s + 0.0616};
    };
    Lanes<1, decltype(bare)> lane(forces(sea_level), bare);
    lane.depart(0, departure(wedge));
    lane.begin();
    do
        lane.step(0.001);
    while (!lane.crossed_ground(0));
    const Motion end = lane.inside(0, lane.zero_of(lane.z, 0));
    CHECK(end.place.x == Approx(102.829).margin(6e-4));
    CHECK(end.time == Approx(5.3902).margin(6e-5));
    CHECK(-elevation(end.velocity).value == Approx(50.508).margin(6e-4));
    CHECK(fly(wedge, sea_level).carry.value == Approx(102.829).margin(0.1));
}

TEST_CASE("Thinner air carries a drive farther, as in the reference") {
    const double densities[] = {1.225, 1.16727, 1.11164, 1.05807, 1.00649};
    const double carries[] = {231.528, 235.427, 239.057, 242.392, 245.412}; // reference shot A
    for (int i = 0; i < 5; ++i) {
        Air air;
        air.temperature = {288.15};
        air.pressure = {densities[i] * 287.05287 * 288.15};
        CHECK(fly(drive, air).carry.value == Approx(carries[i]).margin(6e-4));
    }
}

TEST_CASE("Step study: the fine step is within 0.1 mm of a step of 1 ms") {
    for (const Launch& l : {drive, fade, iron, wedge}) {
        const Flight exact = fly(l, sea_level, {0.001}), fine = fly(l, sea_level);
        CHECK(fine.carry.value == Approx(exact.carry.value).margin(1e-4));
        CHECK(fine.curve.value == Approx(exact.curve.value).margin(1e-4));
        CHECK(fine.apex.value == Approx(exact.apex.value).margin(1e-4));
        CHECK(fine.time.value == Approx(exact.time.value).margin(1e-5));
    }
}

TEST_CASE("The coarse step is within 0.1 m of the fine step") {
    const double wind = GENERATE(-8.0, 0.0, 8.0);
    Air air;
    air.wind = {{wind}, {0.5 * wind}};
    std::array<Launch, lane_count> launches;
    for (double speed = 25; speed <= 80; speed += 5) {
        for (std::size_t i = 0; i < lane_count; ++i) {
            const double elevation = 4 + static_cast<double>(i % 8) * 4;
            const double spin = 1500 + static_cast<double>(i / 8) * 2800;
            launches[i] = of(speed, elevation, spin, 3, static_cast<double>(i) - 16);
        }
        const auto coarse = land(launches, air);
        for (std::size_t i = 0; i < lane_count; ++i) {
            CAPTURE(speed, i, wind);
            const Flight fine = fly(launches[i], air);
            CHECK(coarse[i].carry.value == Approx(fine.carry.value).margin(0.1));
            CHECK(coarse[i].offline.value == Approx(fine.offline.value).margin(0.1));
            CHECK(coarse[i].curve.value == Approx(fine.curve.value).margin(0.1));
        }
    }
}

TEST_CASE("A flight among others is the same flight as alone, bit for bit") {
    std::array<Launch, lane_count> launches;
    launches.fill(iron);
    launches[3] = drive;
    const auto together = land(launches, sea_level, {0.1});
    CHECK(together[3].carry.value == fly(drive, sea_level, {0.1}).carry.value);
    CHECK(together[0].curve.value == fly(iron, sea_level, {0.1}).curve.value);
}

TEST_CASE("Mirrored launches fly mirrored, exactly") {
    Air left, right;
    left.wind = {{2}, {-3}}, right.wind = {{2}, {3}};
    const Flight a = fly(of(61, 14, 4100, 2.3, 7.1), right);
    const Flight b = fly(of(61, 14, 4100, -2.3, -7.1), left);
    CHECK(a.offline == -b.offline);
    CHECK(a.curve == -b.curve);
    CHECK(a.carry == b.carry);
    CHECK(a.apex == b.apex);
    REQUIRE(a.places.size() == b.places.size());
    for (std::size_t i = 0; i < a.places.size(); ++i)
        CHECK(a.places[i].right == -b.places[i].right);
}

TEST_CASE("Curve is measured from the start line and offline from the target line") {
    const Flight straight = fly(of(60, 13, 4000, 6, 0), sea_level);
    CHECK(straight.curve.value == Approx(0).margin(1e-9));
    CHECK(straight.offline.value ==
          Approx(straight.carry.value * std::sin(unit::radians({6.0}))).margin(1e-9));
    CHECK(fly(of(60, 13, 4000, 0, 5), sea_level).curve.value > 0);
    CHECK(fly(of(60, 13, 4000, 0, -5), sea_level).curve.value < 0);
}

TEST_CASE("Curve per degree of tilt lies where the model puts it") {
    // Own independent computation: part of the carry for each degree of tilt.
    const auto part = [](Launch l, double tilt) {
        l.start = {0};
        l.axis = {tilt};
        const Flight f = fly(l, sea_level);
        return 100 * f.offline.value / f.along.value / tilt;
    };
    CHECK(part(drive, 2) == Approx(0.767).margin(6e-4));
    CHECK(part(drive, 10) == Approx(0.760).margin(6e-4));
    CHECK(part(drive, 20) == Approx(0.739).margin(6e-4));
    CHECK(part(iron, 2) == Approx(0.909).margin(6e-4));
    CHECK(part(iron, 10) == Approx(0.905).margin(6e-4));
    CHECK(part(iron, 20) == Approx(0.893).margin(6e-4));
}

TEST_CASE("Wind helps, hurts and drifts") {
    const auto blown = [](double along, double across) {
        Air air;
        air.wind = {{along}, {across}};
        return fly(drive, air);
    };
    CHECK(blown(5, 0).carry > blown(0, 0).carry);
    CHECK(blown(-5, 0).carry < blown(0, 0).carry);
    CHECK(blown(0, 5).offline.value > 5);
    CHECK(blown(0, 0).offline.value == Approx(0).margin(1e-12));
}

TEST_CASE("A chip is below the range of the published model and says so") {
    // Reynolds 7e4 is about 24 m/s at sea level (range of Naruo et al. 2004).
    CHECK(fly(of(20, 30, 4000, 0, 0), sea_level).below_range);
    CHECK_FALSE(fly(of(26, 30, 4000, 0, 0), sea_level).below_range);
}

TEST_CASE("A flight begins on the tee, ends on the ground and passes its apex") {
    const Flight f = fly(fade, sea_level);
    REQUIRE(f.places.size() > 40);
    CHECK(f.places.front().along.value == 0);
    CHECK(f.places.back().up.value == 0);
    CHECK(f.places.back().along == f.along);
    CHECK(f.places.back().right == f.offline);
    double highest = 0;
    for (const Place& p : f.places)
        highest = std::max(highest, p.up.value);
    CHECK(highest == Approx(f.apex.value).margin(0.05));
}

TEST_CASE("A ball that does not leave upward goes nowhere") {
    const Flight f = fly(of(60, -1, 3000, 2, 0), sea_level);
    CHECK(f.carry.value == 0);
    CHECK(f.places.size() == 1);
}
