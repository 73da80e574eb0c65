#include "measure/change.hpp"
#include "nist_sets.hpp"
#include "shots.hpp"

#include <catch2/catch.hpp>

using measure::describe;

namespace {

/// NIST's accuracy sets: a first value, then two in turn, five hundred times.
std::vector<double> accuracy_set(double first, double low, double high) {
    std::vector<double> values{first};
    for (int i = 0; i < 500; ++i)
        values.insert(values.end(), {low, high});
    return values;
}

void check_certified(const std::vector<double>& values, double mean, double sd,
                     double sd_tolerance) {
    const auto sample = describe(values);
    CHECK(sample.mean == Approx(mean).epsilon(1e-14));
    CHECK(sample.sd == Approx(sd).epsilon(sd_tolerance));
}

} // namespace

// Certified values: NIST StRD, univariate summary statistics.
TEST_CASE("mean and standard deviation agree with the certified NIST sets") {
    SECTION("NumAcc1") { check_certified({10000001, 10000003, 10000002}, 10000002, 1, 1e-15); }
    SECTION("NumAcc2") { check_certified(accuracy_set(1.2, 1.1, 1.3), 1.2, 0.1, 1e-13); }
    // The decimal inputs of the next two have no exact double: 1e-9 and 1e-8 are what is left.
    SECTION("NumAcc3") {
        check_certified(accuracy_set(1000000.2, 1000000.1, 1000000.3), 1000000.2, 0.1, 1e-9);
    }
    SECTION("NumAcc4") {
        check_certified(accuracy_set(10000000.2, 10000000.1, 10000000.3), 10000000.2, 0.1, 1e-8);
    }
    SECTION("Mavro") { check_certified(nist::mavro, 2.001856, 0.000429123454003053, 1e-12); }
    SECTION("Michelso") { check_certified(nist::michelso, 299.8524, 0.0790105478190518, 1e-12); }
    SECTION("Lew") { check_certified(nist::lew, -177.435, 277.332168044316, 1e-14); }
    SECTION("Lottery") {
        check_certified(nist::lottery, 518.958715596330, 291.699727470969, 1e-14);
    }
}

// R 4.2.2: quantile(morley$Speed / 1000 + 299, c(.25, .5, .75)) and mad(); morley is Michelso.
TEST_CASE("quartiles and robust spread agree with R") {
    const auto sample = describe(nist::michelso);
    CHECK(sample.lower == Approx(299.8075).epsilon(1e-15));
    CHECK(sample.median == Approx(299.85).epsilon(1e-15));
    CHECK(sample.upper == Approx(299.8925).epsilon(1e-15));
    CHECK(sample.spread == Approx(0.066717).epsilon(1e-12));
    CHECK(sample.least == 299.62);
    CHECK(sample.most == 300.07);
}

TEST_CASE("quartiles of one to five shots are type 7") {
    // By the definition: linear between ranks 1 + p (n - 1); Hyndman & Fan 1996, definition 7.
    CHECK(describe(std::vector{7.0}).lower == 7);
    CHECK(describe(std::vector{7.0, 3.0}).lower == 4);
    CHECK(describe(std::vector{7.0, 3.0, 5.0}).upper == 6);
    CHECK(describe(std::vector{7.0, 3.0, 5.0, 1.0}).lower == 2.5);
    CHECK(describe(std::vector{7.0, 3.0, 5.0, 1.0, 9.0}).upper == 7);
}

TEST_CASE("drift is the last third's median less the first third's, from nine shots on") {
    std::vector<double> values{5, 4, 9, 0, 0, 0, 1, 2, 8};
    REQUIRE(describe(values).drift);
    CHECK(*describe(values).drift == 2 - 5);
    values.pop_back();
    CHECK_FALSE(describe(values).drift);
    // Eleven shots have thirds of three: the middle five do not count.
    values = {1, 1, 1, 50, 60, 70, 80, 90, 4, 4, 4};
    CHECK(*describe(values).drift == 3);
}

TEST_CASE("an empty block, one shot and equal shots are described without spread") {
    CHECK(describe({}).count == 0);
    CHECK(describe({}).sd == 0);
    const auto one = describe(std::vector{4.6}, 2);
    CHECK(one.set_aside == 2);
    CHECK(one.mean == 4.6);
    CHECK(one.sd == 0);
    CHECK(one.spread == 0);
    const auto equal = describe(std::vector<double>(12, 4.6));
    CHECK(equal.sd == Approx(0).margin(1e-15));
    CHECK(equal.spread == 0);
    CHECK(*equal.drift == 0);
}

TEST_CASE("moving or turning round a block moves or turns round its description") {
    shots::Source source(5);
    for (std::size_t count = 1; count <= 300; count += 23) {
        const auto values = source.normals(count, 3, 2);
        auto moved = values, turned = values;
        for (double& value : moved)
            value += 40;
        for (double& value : turned)
            value = -value;
        const auto sample = describe(values), up = describe(moved), mirrored = describe(turned);
        CHECK(up.median == Approx(sample.median + 40));
        CHECK(up.spread == Approx(sample.spread).margin(1e-12));
        CHECK(up.sd == Approx(sample.sd).margin(1e-12));
        CHECK(mirrored.median == -sample.median);
        CHECK(mirrored.lower == Approx(-sample.upper));
        CHECK(mirrored.spread == sample.spread);
    }
}
