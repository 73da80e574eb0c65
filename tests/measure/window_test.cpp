// Pass marks from a student's own shots.
#include "measure/window.hpp"

#include <catch2/catch.hpp>

#include <random>
#include <vector>

using measure::window;
using Values = std::vector<double>;

namespace {
const Values halves{1, 2, 3, 4, 5};
}

TEST_CASE("the window is the one that half of before and most of after pass") {
    const Values before{-6, -5, -4.5, -3.5, -3, 2.5, 1.5, 0.5, 0.2, 6};
    const Values after{-1, 0.5, 1.2, -0.4, 2.2, 0, 0.8, -1.9, 3, 2.6};
    const auto found = window(before, after, halves);
    REQUIRE(found);
    CHECK(found->half == 3); // 5 of 10 before, 10 of 10 after
    CHECK(found->before == 5);
    CHECK(found->after == 10);
    CHECK(found->index == 2);
}

TEST_CASE("with fewer than five shots a side there is no window") {
    const Values four{1, 2, 3, 4}, five{1, 2, 3, 4, 5};
    CHECK_FALSE(window(four, five, halves));
    CHECK_FALSE(window(five, four, halves));
    CHECK_FALSE(window({}, {}, halves));
}

TEST_CASE("no window where after is no better, or before is beyond every width") {
    const Values same{-4, -3, -2, 2, 3, 4};
    CHECK_FALSE(window(same, same, halves));
    const Values far{9, 10, 11, 9.5, 10.5}, near{0, 0.2, -0.3, 0.1, 0.4};
    CHECK_FALSE(window(far, near, halves));
}

TEST_CASE("whatever the shots, a window keeps its promise and mirrors") {
    std::mt19937 random(7);
    std::normal_distribution<double> wide(0.5, 3), tight(0, 1.5);
    std::size_t some = 0;
    for (int round = 0; round < 500; ++round) {
        Values before, after;
        for (int i = 0; i < 5 + round % 12; ++i)
            before.push_back(wide(random)), after.push_back(tight(random));
        const auto found = window(before, after, halves);
        if (!found) continue;
        ++some;
        const auto part = [](std::size_t n, std::size_t of) { return double(n) / double(of); };
        CHECK(part(found->before, found->of_before) >= 0.35);
        CHECK(part(found->before, found->of_before) <= 0.65);
        CHECK(part(found->after, found->of_after) >= 0.65);
        for (auto* values : {&before, &after})
            for (auto& value : *values)
                value = -value;
        const auto turned = window(before, after, halves);
        REQUIRE(turned);
        CHECK(turned->half == found->half);
    }
    CHECK(some > 100);
}
