#include "ball/opening.hpp"

#include <catch2/catch.hpp>

#include <cmath>

using namespace ball;

namespace {

Soled club(double loft, double lie, double lean = 0) { return {{loft}, {lie}, {lean}}; }

double cotangent(double lie) { return 1 / std::tan(unit::radians({lie})); }

} // namespace

TEST_CASE("Opening the face adds the loft of the exact rotation") {
    // Closed form of the rotation about the shaft, computed independently; degrees of loft added
    // for a face at -10, -5, -2, -1, 1, 2, 5 and 10 degrees.
    const double faces[] = {-10, -5, -2, -1, 1, 2, 5, 10};
    struct Row {
        double loft, lie;
        double added[8];
    };
    const Row rows[] = {{10.5, 58, {-6.255, -3.133, -1.252, -0.625, 0.624, 1.247, 3.102, 6.131}},
                        {15, 57.5, {-6.406, -3.202, -1.277, -0.638, 0.636, 1.270, 3.154, 6.220}},
                        {22, 61, {-5.605, -2.793, -1.113, -0.555, 0.553, 1.104, 2.739, 5.392}},
                        {27, 61.5, {-5.515, -2.742, -1.091, -0.544, 0.542, 1.080, 2.677, 5.257}},
                        {34, 62.5, {-5.322, -2.637, -1.047, -0.522, 0.519, 1.034, 2.558, 5.008}},
                        {46, 64, {-5.052, -2.488, -0.984, -0.490, 0.486, 0.967, 2.381, 4.630}},
                        {56, 64, {-5.143, -2.511, -0.987, -0.491, 0.485, 0.963, 2.358, 4.539}}};
    for (const Row& row : rows)
        for (int i = 0; i < 8; ++i) {
            CAPTURE(row.loft, faces[i]);
            CHECK(loft_added(club(row.loft, row.lie), {faces[i]}).value ==
                  Approx(row.added[i]).margin(6e-4));
        }
}

TEST_CASE("The turn needed for a face is that of the exact rotation") {
    // Computed independently.
    CHECK(turn_for(club(34, 62.5), {5}).value == Approx(5.547).margin(6e-4));
    CHECK(turn_for(club(34, 62.5), {-5}).value == Approx(-5.719).margin(6e-4));
    CHECK(turn_for(club(10.5, 58), {5}).value == Approx(5.860).margin(6e-4));
    CHECK(turn_for(club(10.5, 58), {-5}).value == Approx(-5.920).margin(6e-4));
}

TEST_CASE("A small opening adds the cotangent of the lie, whatever the loft") {
    // Exact to first order: lie 56 0.6745, 58 0.6249, 60 0.5774, 62.5 0.5206, 64 0.4877. The
    // governing bodies' inertia test orients heads at a 60 degree lie.
    struct Row {
        double lie, slope;
    };
    const auto [lie, slope] = GENERATE(Row{56, 0.6745}, Row{58, 0.6249}, Row{60, 0.5774},
                                       Row{62.5, 0.5206}, Row{64, 0.4877});
    const double loft = GENERATE(0.0, 10.5, 34.0, 56.0);
    const double step = 1e-4;
    const double numeric =
        (loft_added(club(loft, lie), {step}) - loft_added(club(loft, lie), {-step})) /
        unit::Degrees{2 * step};
    CHECK(numeric == Approx(slope).margin(6e-5));
    CHECK(numeric == Approx(cotangent(lie)).margin(1e-6));
}

TEST_CASE("A robot's wrist opened a seven-iron by eight degrees and added about four of loft") {
    // Wood, Henrikson & Broadie 2018: about one degree of loft for two of face over 0 to 8.
    CHECK(loft_added(club(34, 62.5), {8}).value == Approx(4).margin(0.3));
}

TEST_CASE("Turning there and asking for the turn agree") {
    for (double loft : {9.0, 34.0, 60.0})
        for (double lie : {55.0, 62.5, 70.0})
            for (double lean : {-3.0, 0.0, 8.0})
                for (double turn = -30; turn <= 30; turn += 5) {
                    CAPTURE(loft, lie, lean, turn);
                    const Opened o = turned(club(loft, lie, lean), {turn});
                    CHECK(turn_for(club(loft, lie, lean), o.face).value ==
                          Approx(turn).margin(1e-9));
                    CHECK(loft_added(club(loft, lie, lean), o.face).value + loft - lean ==
                          Approx(o.loft.value).margin(1e-9));
                }
}

TEST_CASE("Unturned, the face is square with the loft that the lean leaves") {
    const Opened o = turned(club(34, 62.5, 6), {0});
    CHECK(o.face.value == Approx(0).margin(1e-12));
    CHECK(o.loft.value == Approx(28));
    CHECK(loft_added(club(34, 62.5, 6), {0}).value == Approx(0).margin(1e-12));
}

TEST_CASE("Lean is a rotation of the whole club") {
    // Turning a leaned club equals leaning a turned club: compare with the rotation written out.
    const double lean = unit::radians({6.0}), psi = unit::radians({9.0});
    const double loft = unit::radians({34.0}), lie = unit::radians({62.5});
    const double x =
        std::cos(loft) * std::cos(psi) - std::cos(lie) * std::sin(loft) * std::sin(psi);
    const double y = -std::sin(lie) * std::cos(loft) * std::sin(psi) +
                     std::cos(lie) * std::sin(lie) * std::sin(loft) * (1 - std::cos(psi));
    const double z = std::sin(loft) * std::cos(psi) +
                     std::cos(lie) * std::cos(loft) * std::sin(psi) +
                     std::sin(lie) * std::sin(lie) * std::sin(loft) * (1 - std::cos(psi));
    const double fx = x * std::cos(lean) + z * std::sin(lean);
    const double fz = z * std::cos(lean) - x * std::sin(lean);
    const Opened o = turned(club(34, 62.5, 6), {9});
    CHECK(o.face.value == Approx(unit::degrees(std::atan2(-y, fx)).value).margin(1e-9));
    CHECK(o.loft.value == Approx(unit::degrees(std::asin(fz)).value).margin(1e-9));
}
