#include "measure/change.hpp"
#include "measure/rank.hpp"
#include "shots.hpp"

#include <catch2/catch.hpp>

#include <algorithm>

using measure::shift;

namespace {

void check_order(const measure::Shift& found) {
    for (const auto* interval : {&found.at80, &found.at90, &found.at95}) {
        if (!*interval) continue;
        CHECK((*interval)->lower <= found.value);
        CHECK((*interval)->upper >= found.value);
        CHECK((*interval)->level <= 1);
    }
    if (found.at95) CHECK(found.at95->lower <= found.at90->lower);
    if (found.at90) CHECK(found.at90->upper >= found.at80->upper);
}

std::vector<double> plus(std::vector<double> values, double amount) {
    for (double& value : values)
        value += amount;
    return values;
}

std::vector<double> turned(std::vector<double> values) {
    for (double& value : values)
        value = -value;
    return values;
}

} // namespace

TEST_CASE("the shift is the median of all differences, and intervals are two of them") {
    shots::Source source(1);
    for (std::size_t m = 1; m <= 300; m = m * 2 + 1) {
        for (std::size_t n = 1; n <= 300; n = n * 3 + 1) {
            const auto before = source.normals(m), after = source.normals(n, 1);
            std::vector<double> all;
            for (const double b : before) {
                for (const double a : after)
                    all.push_back(a - b);
            }
            std::sort(all.begin(), all.end());
            const auto found = shift(before, after);
            CHECK(found.value == 0.5 * (all[(all.size() - 1) / 2] + all[all.size() / 2]));
            const auto cut = measure::RankNull::rank_sum(m, n).cut(0.90);
            REQUIRE(found.at90.has_value() == cut.has_value());
            if (cut) CHECK(found.at90->lower == all[cut->outside]);
            if (cut) CHECK(found.at90->upper == all[all.size() - 1 - cut->outside]);
            check_order(found);
        }
    }
}

TEST_CASE("moving after moves the shift, moving both sides does not") {
    shots::Source source(2);
    for (const std::size_t count : {4U, 9U, 40U, 61U, 150U}) {
        const auto before = source.normals(count), after = source.normals(count + 3);
        const auto found = shift(before, after), both = shift(plus(before, 7), plus(after, 7)),
                   moved = shift(before, plus(after, 2));
        CHECK(both.value == Approx(found.value).margin(1e-12));
        CHECK(both.at95->lower == Approx(found.at95->lower).margin(1e-12));
        CHECK(moved.value == Approx(found.value + 2));
        CHECK(moved.at80->upper == Approx(found.at80->upper + 2));
    }
}

TEST_CASE("turning both sides round, or swapping them, mirrors the shift exactly") {
    shots::Source source(3);
    for (const std::size_t count : {4U, 9U, 40U, 60U, 150U}) {
        const auto before = source.normals(count), after = source.normals(count + 1);
        const auto found = shift(before, after);
        for (const auto& mirror : {shift(turned(before), turned(after)), shift(after, before)}) {
            CHECK(mirror.value == -found.value);
            CHECK(mirror.at95->lower == -found.at95->upper);
            CHECK(mirror.at80->upper == -found.at80->lower);
        }
    }
}

TEST_CASE("any count, ties and equal shots give a finite shift") {
    shots::Source source(4);
    for (std::size_t m = 0; m <= 300; m += m < 12 ? 1 : 36) {
        for (std::size_t n = 0; n <= 300; n += n < 12 ? 1 : 48) {
            check_order(
                shift(shots::rounded(source.normals(m), 1), shots::rounded(source.normals(n), 1)));
            const auto equal = shift(std::vector<double>(m, 3), std::vector<double>(n, 1));
            CHECK(equal.value == (m == 0 || n == 0 ? 0 : -2));
            if (equal.at95) CHECK(equal.at95->lower == equal.at95->upper);
        }
    }
}

TEST_CASE("intervals hold the true shift at least as often as they say") {
    shots::Source source(6);
    constexpr int runs = 4000;
    for (const std::size_t count : {5U, 10U, 70U}) {
        int held80 = 0, held95 = 0;
        for (int run = 0; run < (count > 60 ? 500 : runs); ++run) {
            const auto found = shift(source.block(count, 0, 0), source.block(count, 2, 0));
            held80 += found.at80->lower <= 2 && found.at80->upper >= 2 ? 1 : 0;
            held95 += found.at95->lower <= 2 && found.at95->upper >= 2 ? 1 : 0;
        }
        const double all = count > 60 ? 500 : runs;
        // Four standard errors of a counted rate.
        CHECK(held80 / all > 0.80 - 4 * std::sqrt(0.16 / all));
        CHECK(held95 / all > 0.95 - 4 * std::sqrt(0.0475 / all));
    }
}

TEST_CASE("the middle of one block lies between its quartiles and mirrors") {
    shots::Source source(8);
    for (std::size_t count = 1; count <= 300; count += 13) {
        const auto values = source.normals(count, 5, 2);
        const auto found = measure::middle(values), mirror = measure::middle(turned(values));
        check_order(found);
        CHECK(mirror.value == -found.value);
        const auto sample = measure::describe(values);
        CHECK(found.value >= sample.lower);
        CHECK(found.value <= sample.upper);
        if (found.at95) CHECK(found.at95->exact == (count <= 126));
    }
    CHECK(measure::middle({}).value == 0);
}
