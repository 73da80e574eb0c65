#include "measure/change.hpp"
#include "measure/rank.hpp"

#include <catch2/catch.hpp>

#include <bit>

using measure::RankNull;

namespace {

double chosen(std::size_t n, std::size_t k) {
    double result = 1;
    for (std::size_t i = 1; i <= k; ++i) {
        result = result * static_cast<double>(n - k + i) / static_cast<double>(i);
    }
    return result;
}

/// Every order of m against n values, as bit patterns: how many have U at most `value`.
std::size_t orders_at_most(std::size_t value, std::size_t m, std::size_t n) {
    std::size_t found = 0;
    for (std::uint32_t order = 0; order < (1U << (m + n)); ++order) {
        if (static_cast<std::size_t>(std::popcount(order)) != m) continue;
        std::size_t u = 0, others = 0;
        for (std::size_t i = 0; i < m + n; ++i) {
            if ((order >> i & 1U) != 0)
                u += others;
            else
                ++others;
        }
        found += u <= value ? 1 : 0;
    }
    return found;
}

} // namespace

TEST_CASE("the rank-sum distribution is the one of listing every order") {
    for (std::size_t m = 1; m <= 6; ++m) {
        for (std::size_t n = 1; n <= 6; ++n) {
            const auto null = RankNull::rank_sum(m, n);
            REQUIRE(null.exact());
            for (std::size_t u = 0; u <= m * n; ++u) {
                const auto expected =
                    static_cast<double>(orders_at_most(u, m, n)) / chosen(m + n, m);
                CHECK(null.at_most(u) == Approx(expected).epsilon(1e-14));
            }
        }
    }
}

TEST_CASE("the signed-rank distribution is the one of listing every sign") {
    for (std::size_t n = 1; n <= 10; ++n) {
        const auto null = RankNull::signed_rank(n);
        for (std::size_t v = 0; v <= n * (n + 1) / 2; ++v) {
            std::size_t found = 0;
            for (std::uint32_t signs = 0; signs < (1U << n); ++signs) {
                std::size_t sum = 0;
                for (std::size_t i = 0; i < n; ++i)
                    sum += (signs >> i & 1U) != 0 ? i + 1 : 0;
                found += sum <= v ? 1 : 0;
            }
            const auto expected = static_cast<double>(found) / static_cast<double>(1U << n);
            CHECK(null.at_most(v) == Approx(expected).epsilon(1e-14));
        }
    }
}

// Hollander & Wolfe 1973, p. 69 f.: permeability of the human chorioamnion; R's ?wilcox.test.
TEST_CASE("the rank-sum example of Hollander and Wolfe") {
    const std::vector<double> at_term{.80, .83, 1.89, 1.04, 1.45, 1.38, 1.91, 1.64, .73, 1.46};
    const std::vector<double> earlier{1.15, .88, .90, .74, 1.21};
    std::size_t u = 0;
    for (const double x : at_term) {
        for (const double y : earlier)
            u += x > y ? 1 : 0;
    }
    CHECK(u == 35);
    CHECK(RankNull::rank_sum(10, 5).at_most(50 - u) == Approx(382.0 / 3003).epsilon(1e-15));
    const auto shift = measure::shift(earlier, at_term);
    CHECK(shift.value == Approx(0.305).epsilon(1e-14));
    REQUIRE(shift.at95);
    CHECK(shift.at95->lower == Approx(-0.15).epsilon(1e-14));
    CHECK(shift.at95->upper == Approx(0.76).epsilon(1e-14));
    CHECK(shift.at95->exact);
}

// Hollander & Wolfe 1973, p. 29 f.: depression scores before and after; R's ?wilcox.test.
TEST_CASE("the signed-rank example of Hollander and Wolfe") {
    const std::vector<double> first{1.83, .50, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.30};
    const std::vector<double> second{.878, .647, .598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29};
    std::vector<double> differences;
    for (std::size_t i = 0; i < first.size(); ++i)
        differences.push_back(first[i] - second[i]);
    // V = 40, so that 5 of the 45 ranks lie on the other side.
    CHECK(RankNull::signed_rank(9).at_most(5) == 10.0 / 512);
    const auto middle = measure::middle(differences);
    CHECK(middle.value == Approx(0.46).epsilon(1e-14));
    REQUIRE(middle.at95);
    CHECK(middle.at95->lower == Approx(0.010).epsilon(1e-12));
    CHECK(middle.at95->upper == Approx(0.786).epsilon(1e-14));
}

// The smallest possible p, two-sided: 2 / C(2n, n); any table of the rank-sum test.
TEST_CASE("three a side cannot hold 95 %, four can") {
    CHECK(2 * RankNull::rank_sum(3, 3).at_most(0) == Approx(0.1).epsilon(1e-15));
    CHECK(2 * RankNull::rank_sum(5, 5).at_most(0) == Approx(2.0 / 252).epsilon(1e-15));
    CHECK_FALSE(RankNull::rank_sum(3, 3).cut(0.95));
    REQUIRE(RankNull::rank_sum(3, 3).cut(0.90));
    CHECK(RankNull::rank_sum(3, 3).cut(0.90)->level == Approx(0.9).epsilon(1e-14));
    CHECK(RankNull::rank_sum(4, 4).cut(0.95));
    CHECK_FALSE(RankNull::rank_sum(1, 9).cut(0.90));
    CHECK_FALSE(RankNull::rank_sum(0, 9).cut(0.80));
}

TEST_CASE("sixty a side are counted exactly, and the two halves mirror each other") {
    for (const std::size_t n : {7U, 30U, 59U, 60U}) {
        const auto null = RankNull::rank_sum(60, n);
        REQUIRE(null.exact());
        const std::size_t top = null.top();
        CHECK(null.at_most(0) == Approx(1 / chosen(60 + n, n)).epsilon(1e-12));
        CHECK(null.at_most(1) == Approx(2 / chosen(60 + n, n)).epsilon(1e-12));
        CHECK(null.at_most(2) == Approx(4 / chosen(60 + n, n)).epsilon(1e-12));
        for (std::size_t u = 0; u < top; u += 17) {
            CHECK(null.at_most(u) + null.at_most(top - u - 1) == Approx(1).epsilon(1e-14));
        }
        CHECK(null.at_most(top) == 1);
    }
}

// Exact cumulants of U (Kendall & Stuart): mean mn/2, variance mn(m+n+1)/12.
TEST_CASE("mean and variance of the counted distribution are the known ones") {
    for (const auto& [m, n] : std::vector<std::pair<std::size_t, std::size_t>>{
             {60, 60}, {60, 41}, {20, 300}, {5, 300}}) {
        const auto null = RankNull::rank_sum(m, n);
        REQUIRE(null.exact());
        const double top = static_cast<double>(m * n);
        double variance = 0, before = 0;
        for (std::size_t u = 0; u <= null.top(); ++u) {
            const double here = null.at_most(u);
            variance += (here - before) * std::pow(static_cast<double>(u) - top / 2, 2);
            before = here;
        }
        CHECK(variance == Approx(top * static_cast<double>(m + n + 1) / 12).epsilon(1e-9));
    }
}

TEST_CASE("beyond the countable the normal approximation takes over without a jump") {
    const auto counted = RankNull::rank_sum(60, 60), approximated = RankNull::rank_sum(64, 66);
    CHECK(counted.exact());
    CHECK_FALSE(approximated.exact());
    for (const double level : {0.80, 0.90, 0.95}) {
        // The part left out at each end, in both, agrees to within the growth of the sample.
        const auto small = *counted.cut(level), large = *approximated.cut(level);
        const double small_part = static_cast<double>(small.outside) / 3600;
        const double large_part = static_cast<double>(large.outside) / (64.0 * 66);
        CHECK(large_part == Approx(small_part).margin(0.01));
        CHECK(large.level >= level);
        CHECK(large.level < level + 0.002);
    }
}

// z quantiles: NIST/SEMATECH e-Handbook table; digits from R's qnorm.
TEST_CASE("the normal quantile is the inverse of the normal distribution") {
    CHECK(measure::normal_quantile(0.975) == Approx(1.959963984540054).epsilon(1e-14));
    CHECK(measure::normal_quantile(0.75) == Approx(0.6744897501960817).epsilon(1e-14));
    CHECK(measure::normal_quantile(0.5) == Approx(0).margin(1e-14));
    CHECK(measure::normal_at_most(-1.959963984540054) == Approx(0.025).epsilon(1e-13));
}
