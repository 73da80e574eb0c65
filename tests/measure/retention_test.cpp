#include "measure/retention.hpp"
#include "shots.hpp"

#include <catch2/catch.hpp>

using measure::Kept;
using measure::retained;

namespace {

/// Ten shots about `middle`, spread over `half` to each side.
std::vector<double> ten(double middle, double half = 1) {
    std::vector<double> values;
    for (int i = 0; i < 10; ++i)
        values.push_back(middle + half * (2.0 * ((i * 7) % 10) / 9.0 - 1));
    return values;
}

Kept kept(double from, double to, double cold, double half = 1, double worth = 1) {
    return retained(ten(from, half), ten(to, half), ten(cold, half), worth).kept;
}

} // namespace

TEST_CASE("the part kept is the way from before to after that the cold shots still show") {
    const auto found = retained(ten(5), ten(1), ten(2), 1);
    CHECK(found.part == Approx(0.75));
    CHECK(found.cold.median == Approx(2));
    REQUIRE(found.range);
    CHECK(found.range->lower < found.part);
    CHECK(found.range->upper > found.part);
    CHECK(found.range->level == 0.80);
    CHECK(retained(ten(5), ten(1), ten(5), 1).part == Approx(0).margin(1e-12));
    CHECK(retained(ten(5), ten(1), ten(-1), 1).part == Approx(1.5));
    CHECK(retained(ten(-5), ten(-1), ten(-7), 1).part == Approx(-0.5));
}

TEST_CASE("kept, partly and not yet follow the printed rule") {
    CHECK(kept(6, 1, 1) == Kept::kept);
    CHECK(kept(6, 1, 2.2) == Kept::kept);
    CHECK(kept(6, 1, 3.5) == Kept::partly);
    CHECK(kept(6, 1, 5) == Kept::not_yet);
    CHECK(kept(6, 1, 9) == Kept::not_yet);
    CHECK(kept(-6, -1, -1.2) == Kept::kept);
}

TEST_CASE("cold shots beyond the far side of the wanted range have moved past it, to either side") {
    const auto cold_at = [](double from, double to, double cold) {
        return retained(ten(from), ten(to), ten(cold), measure::Wanted{-2, 2, 1}).kept;
    };
    CHECK(cold_at(6.1, 2, -4.5) == Kept::past);
    CHECK(cold_at(-6.1, -2, 4.5) == Kept::past);
    CHECK(cold_at(6.1, 2, -1.9) == Kept::kept);
    CHECK(cold_at(6.1, 2, 2.5) == Kept::kept); // on the near side: that is kept, not past
    CHECK(cold_at(6.1, 2, 6) == Kept::not_yet);
    CHECK(cold_at(6.1, 2, 9) == Kept::not_yet); // further out than ever, yet on its own side
}

TEST_CASE("without a change worth having there is nothing to keep a part of") {
    const auto small = retained(ten(5, 0.1), ten(4.5, 0.1), ten(4.5, 0.1), 1);
    CHECK(small.kept == Kept::cannot_tell);
    CHECK_FALSE(small.range);
    CHECK(kept(5, 3.9, 3.9, 6) == Kept::cannot_tell); // the interval of the change holds zero
    CHECK(kept(5, 5, 5) == Kept::cannot_tell);
    CHECK(retained(ten(5), ten(5), ten(4), 1).part == 0);
}

TEST_CASE("three quarters of a change that leave less than is worth having are not kept") {
    CHECK(kept(5, 3.9, 4.1, 0.1) == Kept::cannot_tell);
    CHECK(kept(5, 3.9, 4.0, 0.1) == Kept::kept);
}

TEST_CASE("fewer than five shots in any block are a first look") {
    const std::vector<double> four{1, 1, 1, 1};
    CHECK(retained(four, ten(1), ten(1), 1).kept == Kept::first_look);
    CHECK(retained(ten(5), four, ten(1), 1).kept == Kept::first_look);
    const auto cold = retained(ten(5), ten(1), four, 1);
    CHECK(cold.kept == Kept::first_look);
    CHECK(cold.part == Approx(1));
    CHECK_FALSE(cold.range);
    CHECK(retained({}, {}, {}, 1).kept == Kept::first_look);
    CHECK(retained(ten(5), ten(1), {}, 1).cold.count == 0);
}

TEST_CASE("equal shots and any count give an answer, the same each time") {
    shots::Source source(21);
    const std::vector<double> before(5, 5.0), after(5, 1.0);
    const auto exact = retained(before, after, after, 1);
    CHECK(exact.kept == Kept::kept);
    CHECK(exact.range->lower == 1);
    CHECK(exact.range->upper == 1);
    for (const std::size_t count : {1U, 2U, 5U, 6U, 31U, 300U}) {
        const auto from = source.block(count, 6, 0), to = source.block(count, 1, 0);
        const auto cold = source.block(count, 2, 0);
        const auto first = retained(from, to, cold, 1), second = retained(from, to, cold, 1);
        CHECK(first.kept == second.kept);
        CHECK(std::isfinite(first.part));
        REQUIRE(first.range.has_value() == second.range.has_value());
        if (first.range) CHECK(first.range->lower == second.range->lower);
        if (first.range) CHECK(first.range->lower < first.range->upper);
    }
}
