#include "measure/change.hpp"
#include "measure/verdict.hpp"
#include "shots.hpp"

#include <catch2/catch.hpp>

#include <limits>

using measure::compare;
using measure::Verdict;
using measure::Wanted;

namespace {

/// A face or path within two degrees of square; a degree is worth having.
const Wanted square{-2, 2, 1, true, true, 0.1};

/// Evenly spaced about `middle`, `half` to each side, ends and all; in mixed order.
std::vector<double> even(std::size_t count, double middle, double half) {
    std::vector<double> values(count, middle);
    for (std::size_t i = 0; i < count && count > 1; ++i) {
        const double place = 2 * static_cast<double>(i) / static_cast<double>(count - 1) - 1;
        values[i % 2 == 0 ? i / 2 : count - 1 - i / 2] = middle + half * place;
    }
    return values;
}

Verdict verdict(const std::vector<double>& before, const std::vector<double>& after,
                const Wanted& wanted = square) {
    return compare(before, after, wanted).verdict;
}

std::vector<double> turned(std::vector<double> values) {
    for (double& value : values)
        value = -value;
    return values;
}

} // namespace

TEST_CASE("a clear move of eight a side towards the range is changed") {
    CHECK(verdict(even(8, 4.6, 1), even(8, 1.1, 1)) == Verdict::changed);
    CHECK(verdict(even(8, -4.6, 1), even(8, -1.1, 1)) == Verdict::changed);
    CHECK(verdict(even(10, 9, 1), even(10, 5, 1)) == Verdict::changed);
}

TEST_CASE("seven shots on either side make it probably, four a first look") {
    const auto before = even(8, 4.6, 1), after = even(8, 1.1, 1);
    CHECK(verdict(even(7, 4.6, 1), after) == Verdict::probably);
    CHECK(verdict(before, even(7, 1.1, 1)) == Verdict::probably);
    CHECK(verdict(even(5, 4.6, 1), even(5, 1.1, 1)) == Verdict::probably);
    CHECK(verdict(even(4, 4.6, 1), after) == Verdict::first_look);
    CHECK(verdict(before, even(4, 1.1, 1)) == Verdict::first_look);
    CHECK(verdict(before, {}) == Verdict::first_look);
    CHECK(verdict({}, {}) == Verdict::first_look);
}

TEST_CASE("a shift under the worth-having size is never changed") {
    // 0.9 degrees, every shot: clear, but the coach said one degree.
    CHECK(verdict(even(20, 4.6, 0.2), even(20, 3.7, 0.2)) == Verdict::about_same);
    // A whole degree as a device prints it, 4.6 less 3.6, is under one in binary.
    REQUIRE(4.6 - 3.6 < 1.0);
    CHECK(verdict(std::vector<double>(8, 4.6), std::vector<double>(8, 3.6)) == Verdict::changed);
    Wanted careful = square;
    careful.worth_having = 4;
    CHECK(verdict(even(10, 4.6, 3), even(10, 2, 3), careful) == Verdict::probably);
}

TEST_CASE("the interval must clear three tenths of the pooled spread") {
    const auto before = even(10, 6, 1);
    for (double shift = 0; shift < 4; shift += 0.05) {
        const auto change =
            compare(before, even(10, 6 - shift, 1), Wanted{-1, 1, 0.01, true, true, 0.1});
        const double limit = -0.3 * change.pooled_spread;
        if (std::abs(change.shift.at95->upper - limit) < 1e-6) continue;
        if (std::abs(change.shift.at80->upper - limit) < 1e-6) continue;
        const Verdict expected = change.shift.at95->upper < limit   ? Verdict::changed
                                 : change.shift.at80->upper < limit ? Verdict::probably
                                                                    : Verdict::cannot_tell;
        CHECK(change.verdict == expected);
    }
}

TEST_CASE("a move away from the range is the other way, by the whole rule of changed") {
    CHECK(verdict(even(8, 3, 1), even(8, 6, 1)) == Verdict::other_way);
    CHECK(verdict(even(8, -3, 1), even(8, -6, 1)) == Verdict::other_way);
    // Below the mirrored thresholds it cannot be told.
    CHECK(verdict(even(7, 3, 1), even(7, 6, 1)) == Verdict::cannot_tell);
    CHECK(verdict(even(8, 3, 3), even(8, 5, 3)) == Verdict::cannot_tell);
}

TEST_CASE("from right of the range to left of it is past square, whatever the shift") {
    CHECK(verdict(even(8, 4.6, 1), even(8, -4, 1)) == Verdict::past_square);
    CHECK(verdict(even(5, 4.6, 1), even(5, -4, 1)) == Verdict::past_square);
    CHECK(verdict(even(8, -4.6, 1), even(8, 4, 1)) == Verdict::past_square);
    CHECK(verdict(even(8, 4.6, 1), even(8, -2, 1)) == Verdict::changed);
    const Wanted open_end{-1, std::numeric_limits<double>::infinity(), 1, true, true, 0.1};
    CHECK(verdict(even(8, -4.6, 1), even(8, 400, 1), open_end) == Verdict::changed);
}

TEST_CASE("two-sided misses are judged by their spread, with fifteen a side") {
    CHECK(verdict(even(15, 0, 8), even(15, 0, 3)) == Verdict::tighter);
    CHECK(verdict(even(14, 0, 8), even(15, 0, 3)) == Verdict::cannot_tell);
    CHECK(verdict(even(15, 0, 8), even(15, 0, 4.2)) == Verdict::cannot_tell);
    // One wild shot after: the robust spread is halved, the standard deviation is not.
    auto wild = even(15, 0, 3);
    wild[4] = 30;
    CHECK(compare(even(15, 0, 8), wild, square).spread_ratio < 0.5);
    CHECK(verdict(even(15, 0, 8), wild) == Verdict::cannot_tell);
    // A shift is no answer to a question of spread.
    CHECK(verdict(even(15, 0, 8), even(15, 9, 8)) == Verdict::cannot_tell);
    CHECK(verdict(even(4, 0, 8), even(15, 0, 3)) == Verdict::first_look);
    CHECK(compare(even(15, 0, 8), even(15, 0, 3), square).straddles);
    CHECK_FALSE(compare(even(15, 5, 8), even(15, 0, 3), square).straddles);
}

TEST_CASE("one stray miss on the far side does not make the misses two-sided") {
    std::vector<double> before = even(11, 5, 1.5);
    before.push_back(-9);
    CHECK_FALSE(compare(before, even(12, 1, 1.5), square).straddles);
    CHECK(verdict(before, even(12, 1, 1.5)) == Verdict::changed);
}

TEST_CASE("tighter is not claimed below the reading step") {
    Wanted coarse = square;
    coarse.least = coarse.most = 0;
    coarse.step = 1;
    std::vector<double> before, after(20, 0.0);
    for (int i = 0; i < 20; ++i)
        before.push_back(i % 2 == 0 ? 1 : -1);
    // Spread 1.48 then none: half a step finer than the device reads.
    CHECK(compare(before, after, coarse).before.spread == Approx(1.4826));
    CHECK(verdict(before, after, coarse) == Verdict::cannot_tell);
    for (double& value : before)
        value *= 2;
    CHECK(verdict(before, after, coarse) == Verdict::tighter);
}

TEST_CASE("a middle inside the range is wanted away from the side that was missed") {
    // Middle 1.5, a third of the shots right of 2, none left of -2.
    const auto before = even(12, 1.5, 1.5);
    CHECK(verdict(before, even(12, -0.5, 1.2)) == Verdict::changed);
    CHECK(verdict(before, even(12, 4, 1.5)) == Verdict::other_way);
    CHECK(verdict(turned(before), even(12, 0.5, 1.2)) == Verdict::changed);
}

TEST_CASE("where nothing was to gain, only leaving the range is said") {
    const auto before = even(12, 0, 1);
    CHECK(verdict(before, even(12, 1.5, 0.4)) == Verdict::cannot_tell);
    CHECK(verdict(before, even(12, 4, 1)) == Verdict::other_way);
    CHECK(verdict(before, even(12, -4, 1)) == Verdict::other_way);
    CHECK(verdict(before, even(12, 0.1, 0.9)) == Verdict::about_same);
    CHECK(compare(before, even(12, 1.5, 0.4), square).at_home);
    CHECK_FALSE(compare(before, even(12, 2.5, 0.4), square).at_home);
    CHECK_FALSE(compare(even(12, 1.5, 1.5), even(12, 1.9, 0.4), square).at_home); // some missed
}

TEST_CASE("about the same needs the whole 90 % interval within the worth-having size") {
    CHECK(verdict(even(15, 4, 1), even(15, 4.1, 1)) == Verdict::about_same);
    CHECK(verdict(even(15, 4, 4), even(15, 4.1, 4)) == Verdict::cannot_tell);
    for (double half = 0.2; half < 6; half += 0.1) {
        const auto change = compare(even(12, 5, half), even(12, 5.2, half), square);
        const bool within = change.shift.at90->lower >= -1 && change.shift.at90->upper <= 1;
        CHECK(change.verdict == (within ? Verdict::about_same : Verdict::cannot_tell));
    }
}

TEST_CASE("another club, another measure or an aim named too late gets no verdict") {
    const auto before = even(10, 4.6, 1), after = even(10, 1, 1);
    Wanted other_club = square, late = square;
    other_club.comparable = false;
    late.named_before = false;
    CHECK(verdict(before, after, other_club) == Verdict::not_comparable);
    CHECK(verdict(before, after, late) == Verdict::not_judged);
    late.comparable = false;
    CHECK(verdict(before, after, late) == Verdict::not_comparable);
    const auto unjudged = compare(before, after, std::nullopt);
    CHECK(unjudged.verdict == Verdict::not_judged);
    CHECK(unjudged.shift.value == Approx(-3.6));
    CHECK_FALSE(unjudged.shots_that_would_tell);
}

TEST_CASE("counts are taken by distance from the range, not by sign") {
    const std::vector<double> before{4, 5, 5, 5, 6}, after{1, -4, -5.1, 4.9, 5, 7, -2};
    const auto change = compare(before, after, square, 1, 2);
    CHECK(change.nearer == 4); // 1, -4, 4.9 and -2; 5 is no nearer than 5
    CHECK(change.inside_before == 0);
    CHECK(change.inside_after == 2);
    CHECK(change.before.set_aside == 1);
    CHECK(change.after.set_aside == 2);
}

TEST_CASE("already moving is said when the end of before sits where after starts") {
    const std::vector<double> sliding{6, 6.2, 5.8, 5, 4.5, 4, 2.2, 2, 1.8};
    const std::vector<double> steady{6, 5, 5.5, 5.2, 5.6, 5.4, 5.8, 5.3, 6.1};
    const std::vector<double> after{2, 1.9, 2.3, 2, 1.7, 2.2, 1.8, 2.1, 2};
    CHECK(compare(sliding, after, square).already_moving);
    CHECK_FALSE(compare(steady, after, square).already_moving);
    CHECK_FALSE(compare(steady, steady, square).already_moving);
    CHECK_FALSE(compare(std::vector{6.0, 4.0, 2.0}, after, square).already_moving);
}

TEST_CASE("shots that would tell are told for cannot tell alone, and more than there were") {
    shots::Source source(12);
    int told = 0;
    for (int run = 0; run < 2000; ++run) {
        const std::size_t count = 5 + static_cast<std::size_t>(run % 12);
        const auto change =
            compare(source.block(count, 4, 0.3), source.block(count, 3, 0.3), square);
        if (change.verdict != Verdict::cannot_tell) CHECK_FALSE(change.shots_that_would_tell);
        if (!change.shots_that_would_tell) continue;
        ++told;
        CHECK(*change.shots_that_would_tell > count);
        CHECK(*change.shots_that_would_tell <= measure::most_shots_worth_telling);
    }
    CHECK(told > 200);
}

TEST_CASE("with the shots that would tell, the rule tells about four times in five") {
    shots::Source source(13);
    int told = 0, asked = 0;
    // Today's shift and interval are noisy, so the mean over many todays with the shift of today.
    for (int run = 0; run < 4000 && asked < 800; ++run) {
        const auto before = source.normals(8, 10, 3), after = source.normals(8, 8, 3);
        const auto today = compare(before, after, square);
        if (!today.shots_that_would_tell || std::abs(today.shift.value) < square.worth_having)
            continue;
        ++asked;
        const std::size_t count = *today.shots_that_would_tell;
        const auto later =
            verdict(source.normals(count, 10, 3), source.normals(count, 10 + today.shift.value, 3));
        told += later == Verdict::changed || later == Verdict::other_way ? 1 : 0;
    }
    REQUIRE(asked >= 400);
    CHECK(told / static_cast<double>(asked) > 0.65);
    CHECK(told / static_cast<double>(asked) < 0.95);
}

TEST_CASE("the mirror image of two blocks has the mirrored change and the same verdict") {
    shots::Source source(14);
    for (int run = 0; run < 3000; ++run) {
        const auto m = static_cast<std::size_t>(1 + run % 19),
                   n = static_cast<std::size_t>(1 + run % 23);
        const double from = 6 * source.normal(), to = 6 * source.normal();
        const auto before = source.block(m, from, 1), after = source.block(n, to, 1);
        Wanted wanted{-1, 2.5, 1, true, true, 0.1}, mirrored{-2.5, 1, 1, true, true, 0.1};
        const auto here = compare(before, after, wanted);
        const auto there = compare(turned(before), turned(after), mirrored);
        CHECK(here.verdict == there.verdict);
        CHECK(here.nearer == there.nearer);
        CHECK(here.shift.value == -there.shift.value);
        CHECK(here.already_moving == there.already_moving);
        CHECK(here.shots_that_would_tell == there.shots_that_would_tell);
    }
}

TEST_CASE("moving shots and range together leaves the verdict as it was") {
    shots::Source source(15);
    for (int run = 0; run < 1000; ++run) {
        // On a step of a quarter, sums are exact.
        const auto before = shots::rounded(source.block(10, 3, 1), 4);
        const auto after = shots::rounded(source.block(9, 1, 1), 4);
        auto before_up = before, after_up = after;
        for (double& value : before_up)
            value += 32;
        for (double& value : after_up)
            value += 32;
        const Wanted low{-1, 1, 1, true, true, 0.25}, high{31, 33, 1, true, true, 0.25};
        CHECK(verdict(before, after, low) == verdict(before_up, after_up, high));
    }
}

TEST_CASE("one to three hundred shots, ties and equal shots give finite changes") {
    shots::Source source(16);
    for (std::size_t m = 0; m <= 300; m += m < 17 ? 1 : 71) {
        for (std::size_t n = 0; n <= 300; n += n < 17 ? 1 : 71) {
            const auto smooth = compare(source.normals(m, 3), source.normals(n, 1), square);
            const auto tied = compare(shots::rounded(source.normals(m, 3), 1),
                                      shots::rounded(source.normals(n, 1), 1), square);
            const auto equal =
                compare(std::vector<double>(m, 3), std::vector<double>(n, 1), square);
            for (const auto& change : {smooth, tied, equal}) {
                CHECK(std::isfinite(change.shift.value));
                CHECK(std::isfinite(change.spread_ratio));
                CHECK(change.pooled_spread >= square.step);
                CHECK(change.nearer <= n);
            }
            const std::size_t fewer = std::min(m, n);
            const Verdict expected = fewer < 5   ? Verdict::first_look
                                     : fewer < 8 ? Verdict::probably
                                                 : Verdict::changed;
            CHECK(equal.verdict == expected);
            CHECK(equal.pooled_spread == square.step);
        }
    }
}
