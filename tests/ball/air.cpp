#include "ball/air.hpp"
#include "ball/head.hpp"

#include <catch2/catch.hpp>

using namespace ball;

TEST_CASE("The standard atmosphere has the densities of ISO 2533") {
    // ISO 2533 constants, geopotential heights: K, Pa, kg/m^3.
    struct Row {
        double height, temperature, pressure, density;
    };
    const auto [height, temperature, pressure, rho] =
        GENERATE(Row{0, 288.15, 101325.0, 1.225}, Row{500, 284.90, 95460.8, 1.16727},
                 Row{1000, 281.65, 89874.6, 1.11164}, Row{1500, 278.40, 84556.0, 1.05807},
                 Row{2000, 275.15, 79495.2, 1.00649}, Row{3000, 268.65, 70108.5, 0.90912});
    const StandardAir air = standard_air({height});
    CHECK(air.temperature.value == Approx(temperature).margin(1e-9));
    CHECK(air.pressure.value == Approx(pressure).margin(0.06));
    CHECK(density(air.temperature, air.pressure).value == Approx(rho).margin(6e-6));
}

TEST_CASE("A geometric height is a little less in geopotential metres") {
    // ISO 2533 constants: geometric 1000 m 1.11166, 2000 m 1.00655.
    Air air;
    air.height = {1000};
    CHECK(density(air).value == Approx(1.11166).margin(6e-6));
    air.height = {2000};
    CHECK(density(air).value == Approx(1.00655).margin(6e-6));
}

TEST_CASE("A temperature that was measured takes the standard's place") {
    // Dry air at 101 325 Pa, computed from the gas law; Penner 2001 uses 1.204 at 20 degrees C.
    struct Row {
        double celsius, density;
    };
    const auto [celsius, rho] = GENERATE(Row{10, 1.246632}, Row{20, 1.204106}, Row{25, 1.183913});
    Air air;
    air.temperature = {273.15 + celsius};
    CHECK(density(air).value == Approx(rho).margin(6e-7));
}

TEST_CASE("Reynolds numbers are those of a golf ball at sea level") {
    // Sutherland viscosity at 15 degrees C, own computation.
    CHECK(reynolds({70}, {}) == Approx(204482).margin(30));
    CHECK(reynolds({40}, {}) == Approx(116847).margin(20));
    CHECK(reynolds({25}, {}) == Approx(73029).margin(15));
}

TEST_CASE("The ball keeps to the limits of the Equipment Rules") {
    // Equipment Rules Part 4 (R&A, USGA): at most 45.93 g and at least 42.67 mm.
    CHECK(ball_mass.value <= 0.04593);
    CHECK(2 * ball_radius.value >= 0.04267);
    // Uniform sphere, exact: 8.3626078e-6 kg m^2.
    CHECK(ball_inertia_factor * ball_mass.value * ball_radius.value * ball_radius.value ==
          Approx(8.3626078e-6).epsilon(1e-7));
}
