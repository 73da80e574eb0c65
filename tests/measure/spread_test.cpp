#include "measure/spread.hpp"
#include "shots.hpp"

#include <catch2/catch.hpp>

using namespace measure;

// Quantiles of chi-square with two degrees, -2 ln(1 - p): exact; also any printed table.
// 0.6827 stands for the part within one standard deviation of a single normal.
TEST_CASE("a unit ellipse has the chi-square quantile as its squared radius") {
    const Cloud unit{0, 0, 1, 0, 1};
    const std::vector<std::pair<double, double>> table{{0.50, 1.386294},
                                                       {0.682689492137, 2.295749},
                                                       {0.90, 4.605170},
                                                       {0.95, 5.991465},
                                                       {0.99, 9.210340}};
    for (const auto& [part, quantile] : table) {
        const auto round = ellipse(unit, part);
        CHECK(round.major * round.major == Approx(quantile).epsilon(5e-7));
        CHECK(round.minor == round.major);
    }
}

// Computed by hand from the eigenvalues 4.420937 and 0.579063 of the covariance.
TEST_CASE("a slanted ellipse has the axes and angle of its covariance") {
    const auto slanted = ellipse({3, -2, 4, 1.2, 1}, 0.95);
    CHECK(slanted.x == 3);
    CHECK(slanted.y == -2);
    CHECK(slanted.major == Approx(5.146639).epsilon(1e-6));
    CHECK(slanted.minor == Approx(1.862642).epsilon(1e-6));
    CHECK(slanted.angle == Approx(19.329904).epsilon(1e-7));
    CHECK(ellipse({0, 0, 4, -1.2, 1}, 0.95).angle == Approx(-19.329904).epsilon(1e-7));
    CHECK(ellipse({0, 0, 1, 0, 4}, 0.95).angle == Approx(90));
}

TEST_CASE("the ellipse holds its part of normal shots") {
    shots::Source source(3);
    std::vector<double> xs, ys;
    for (int i = 0; i < 20000; ++i) {
        const double u = source.normal(), v = source.normal();
        xs.push_back(1 + 2 * u);
        ys.push_back(-3 + 0.6 * u + 0.8 * v);
    }
    const auto found = cloud(xs, ys);
    CHECK(found.xx == Approx(4).epsilon(0.03));
    CHECK(found.xy == Approx(1.2).epsilon(0.05));
    CHECK(found.yy == Approx(1).epsilon(0.03));
    const auto shape = ellipse(found, 0.9);
    const double turn = shape.angle * std::numbers::pi / 180;
    int inside = 0;
    for (std::size_t i = 0; i < xs.size(); ++i) {
        const double dx = xs[i] - shape.x, dy = ys[i] - shape.y;
        const double along = dx * std::cos(turn) + dy * std::sin(turn);
        const double across = dy * std::cos(turn) - dx * std::sin(turn);
        inside += std::hypot(along / shape.major, across / shape.minor) <= 1 ? 1 : 0;
    }
    CHECK(inside / 20000.0 == Approx(0.9).margin(0.01));
}

TEST_CASE("shots on a line or on a spot have a flat ellipse") {
    const auto line = ellipse(cloud(std::vector{1.0, 2.0, 3.0}, std::vector{2.0, 4.0, 6.0}), 0.5);
    CHECK(line.minor == Approx(0).margin(1e-7));
    CHECK(line.angle == Approx(63.434949));
    const auto spot = ellipse(cloud(std::vector{1.0, 1.0}, std::vector{2.0, 2.0}), 0.5);
    CHECK(spot.major == 0);
    CHECK(spot.angle == 0);
    CHECK(cloud({}, {}).x == 0);
    CHECK(cloud(std::vector{4.0}, std::vector{5.0, 6.0}).y == 5);
}

// Iglewicz & Hoaglin 1993; data: R's morley, experiment 3; scores by hand to three digits.
TEST_CASE("modified z scores mark the far values of Michelson's third experiment") {
    const std::vector<double> speeds{880, 880, 880, 860, 720, 720, 620, 860, 970, 950,
                                     880, 910, 850, 870, 840, 840, 850, 840, 840, 840};
    const std::vector<double> scores{.843,  .843,  .843,  .169,  -4.553, -4.553, -7.925,
                                     .169,  3.878, 3.204, .843,  1.855,  -.169,  .506,
                                     -.506, -.506, -.169, -.506, -.506,  -.506};
    const auto found = modified_z(speeds);
    REQUIRE(found.size() == scores.size());
    for (std::size_t i = 0; i < scores.size(); ++i) {
        CHECK(found[i] == Approx(scores[i]).margin(5.1e-4));
        const bool far = speeds[i] == 720 || speeds[i] == 620 || speeds[i] == 970;
        CHECK((std::abs(found[i]) > far_off) == far);
    }
}

TEST_CASE("modified z scores stay finite when most values are equal") {
    const auto most_equal = modified_z(std::vector{5.0, 5.0, 5.0, 5.0, 9.0});
    CHECK(most_equal[0] == 0);
    CHECK(most_equal[4] == Approx(4 / (1.2533141373155 * 0.8)));
    CHECK(modified_z(std::vector{5.0, 5.0}) == std::vector{0.0, 0.0});
    CHECK(modified_z({}).empty());
}
