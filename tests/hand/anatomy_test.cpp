#include "hand/anatomy.hpp"

#include <catch2/catch.hpp>

using namespace hand;

// Means of ANSUR II (2012), computed from its public tables: men n = 4082, women n = 1986.
TEST_CASE("Large and small hands have the mean length and breadth of men and women") {
    const Anatomy large = anatomy(Build::large), small = anatomy(Build::small);
    CHECK(large.hand_length() == Approx(193.28).epsilon(.01));
    CHECK(large.hand_breadth() == Approx(88.26).epsilon(.01));
    CHECK(small.hand_length() == Approx(181.08).epsilon(.01));
    CHECK(small.hand_breadth() == Approx(78.15).epsilon(.01));
}

// Ratios to hand length: Buchholz, Armstrong & Goldstein (1992). The flesh of our tips is part of
// the last length, hence its wider tolerance; lengths of people differ by about a tenth (one
// standard deviation).
TEST_CASE("Finger segments keep their published ratios to hand length") {
    constexpr double published[fingers][3]{
        {.245, .143, .097}, {.266, .170, .108}, {.244, .165, .107}, {.204, .117, .093}};
    for (const Build build : {Build::large, Build::small, Build::child}) {
        const Anatomy a = anatomy(build);
        for (int f = 0; f < fingers; ++f) {
            for (int j = 0; j < 3; ++j) {
                const double ratio = a.ray[f].phalanx[j] / a.hand_length();
                CHECK(ratio == Approx(published[f][j]).epsilon(j == 2 ? .15 : .08));
            }
        }
        CHECK(a.thumb[0] / a.hand_length() == Approx(.251).epsilon(.08));
        CHECK(a.thumb[1] / a.hand_length() == Approx(.196).epsilon(.08));
    }
}

TEST_CASE("A child's hand is smaller and slimmer, not a shrunken adult's handle") {
    const Anatomy child = anatomy(Build::child), small = anatomy(Build::small);
    CHECK(child.hand_length() < small.hand_length());
    CHECK(child.hand_breadth() < small.hand_breadth());
    CHECK(child.handle_radius < small.handle_radius);
}

// Equipment Rules: a grip's cross-section may not exceed 1.75 in (44.45 mm).
TEST_CASE("Handles keep the Equipment Rules' limit and common sizes") {
    const auto across = [](Build build, double station) {
        const Anatomy a = anatomy(build);
        return 2 * (a.handle_radius - station * a.handle_taper);
    };
    for (const Build build : {Build::large, Build::small, Build::child}) {
        CHECK(across(build, 0) <= 44.45);
        CHECK(across(build, 254) >
              11); // wider than the shaft it sits on; common practice, no source
    }
    // .900 in and .850 in, 2 in below the cap; common practice, no source.
    CHECK(across(Build::large, 50.8) == Approx(22.86).margin(.01));
    CHECK(across(Build::small, 50.8) == Approx(21.59).margin(.01));
}
