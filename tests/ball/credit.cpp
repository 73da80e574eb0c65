#include "ball/credit.hpp"

#include "ball/credit_model.hpp"
#include "ball/shapley.hpp"
#include "lesson.hpp"

#include <catch2/catch.hpp>

#include <numeric>

using namespace ball;

namespace {

double sum(const OutcomeCredit& c) {
    double total = 0;
    for (const auto& share : c.shares)
        total += share ? share->value : 0;
    return total;
}

const std::optional<Part>& share(const OutcomeCredit& c, Factor f) {
    return c.shares[static_cast<std::size_t>(f)];
}

Credit without_ranges(const std::vector<Shot>& before, const std::vector<Shot>& after) {
    return *credit(before, after, lesson::setting(), {0, 0.8, 1});
}

template <class Edit>
std::vector<Shot> edited(std::vector<Shot> shots, const Edit& edit) {
    for (Shot& s : shots)
        edit(s);
    return shots;
}

const std::vector<Shot> before = lesson::block(lesson::open_face, 0.97);
const std::vector<Shot> after = lesson::block(lesson::square_face, 1.0);

} // namespace

TEST_CASE("Shapley values of the glove game are the textbook's") {
    // One left glove, two right ones, a pair is worth 1: 2/3, 1/6, 1/6 (textbook, from memory).
    std::array<double, 8> worth{};
    worth[0b011] = worth[0b101] = worth[0b111] = 1;
    const auto s = shapley<3>(worth);
    CHECK(s[0] == Approx(2.0 / 3));
    CHECK(s[1] == Approx(1.0 / 6));
    CHECK(s[2] == Approx(1.0 / 6));
}

TEST_CASE("The order of factors does not matter") {
    std::array<double, 32> worth{};
    for (std::size_t s = 0; s < 32; ++s)
        worth[s] = lesson::scatter(s, 7);
    const std::array<std::size_t, 5> order{3, 0, 4, 2, 1}; // new place of each factor
    std::array<double, 32> moved{};
    for (std::size_t s = 0; s < 32; ++s) {
        std::size_t t = 0;
        for (std::size_t i = 0; i < 5; ++i)
            t |= (s >> i & 1u) << order[i];
        moved[t] = worth[s];
    }
    const auto a = shapley<5>(worth), b = shapley<5>(moved);
    for (std::size_t i = 0; i < 5; ++i)
        CHECK(a[i] == Approx(b[order[i]]).margin(1e-12));
}

TEST_CASE("Shares add up to the modelled change, and with the rest to the measured one") {
    const Credit c = *credit(before, after, lesson::setting());
    for (const OutcomeCredit& o : c.outcomes) {
        CHECK(sum(o) == Approx(o.modelled->value).margin(1e-9));
        CHECK(sum(o) + o.rest->value == Approx(o.measured->value).margin(1e-9));
        CHECK(o.fits == (std::abs(o.rest->value) <= std::abs(o.measured->value) / 2));
    }
}

TEST_CASE("Shots that the model itself made leave little rest") {
    const Credit c = without_ranges(before, after);
    for (const OutcomeCredit& o : c.outcomes) {
        CHECK(*o.fits);
        CHECK(std::abs(o.rest->value) < 0.25 * std::abs(o.measured->value));
    }
    CHECK(c[Outcome::start].measured->value < -2);
    CHECK(share(c[Outcome::start], Factor::face)->value < -2);
}

TEST_CASE("Without scatter the model explains a change to the last centimetres") {
    const std::vector<Shot> a = lesson::block(lesson::open_face, 0.97, 5, 0);
    const std::vector<Shot> b = lesson::block(lesson::square_face, 1.0, 5, 0);
    const Credit c = without_ranges(a, b);
    CHECK(c.share_origin == ShareOrigin::fitted);
    // The share was fitted to both blocks at once: starts within a tenth of a degree.
    CHECK(std::abs(c[Outcome::start].rest->value) < 0.1);
    CHECK(std::abs(c[Outcome::curve].rest->value) < 0.1);
    CHECK(std::abs(c[Outcome::carry].rest->value) < 0.1);
    CHECK(std::abs(*c[Outcome::carry].offset) < 0.1);
}

TEST_CASE("A factor that did not change gets nothing, and a lone one gets everything") {
    const auto factor =
        GENERATE(Factor::face, Factor::path, Factor::loft, Factor::speed, Factor::strike);
    Delivery d = lesson::open_face;
    double strike = 0.97;
    switch (factor) {
    case Factor::face:
        d.face = {1};
        break;
    case Factor::path:
        d.path = {2}, d.attack = {-1};
        break;
    case Factor::loft:
        d.loft = {27};
        break;
    case Factor::speed:
        d.club_speed = {39};
        break;
    case Factor::strike:
        strike = 1.0;
        break;
    }
    const Credit c = without_ranges(lesson::block(lesson::open_face, 0.97, 5, 0),
                                    lesson::block(d, strike, 5, 0));
    for (const OutcomeCredit& o : c.outcomes)
        for (std::size_t f = 0; f < factor_count; ++f)
            CHECK(
                o.shares[f]->value ==
                Approx(f == static_cast<std::size_t>(factor) ? o.modelled->value : 0).margin(1e-9));
}

TEST_CASE("Swinging harder is told apart from the face") {
    Delivery harder = lesson::open_face;
    harder.club_speed = {39};
    const Credit c = without_ranges(before, lesson::block(harder, 0.97));
    CHECK(share(c[Outcome::carry], Factor::speed)->value > 7);
    CHECK(std::abs(share(c[Outcome::carry], Factor::face)->value) < 0.01);
}

TEST_CASE("A change that the model cannot explain stands as the rest and does not fit") {
    const auto longer = edited(before, [](Shot& s) { s.carry->value += 12; });
    const Credit c = without_ranges(before, longer);
    CHECK(c[Outcome::carry].modelled->value == Approx(0).margin(1e-9));
    CHECK(c[Outcome::carry].rest->value == Approx(12));
    CHECK_FALSE(*c[Outcome::carry].fits);
}

TEST_CASE("What the table lacks gets no share and is named") {
    const auto no_loft = [](Shot& s) { s.loft.reset(), s.ball_speed.reset(), s.carry.reset(); };
    const Credit c = without_ranges(edited(before, no_loft), edited(after, no_loft));
    CHECK(c.measured == std::array<bool, 5>{true, true, false, true, false});
    for (const OutcomeCredit& o : c.outcomes) {
        CHECK_FALSE(share(o, Factor::loft));
        CHECK_FALSE(share(o, Factor::strike));
        CHECK(sum(o) == Approx(o.modelled->value).margin(1e-9));
    }
    CHECK_FALSE(c[Outcome::carry].measured);
    CHECK_FALSE(c[Outcome::carry].fits);
    CHECK(c[Outcome::curve].rest);
}

TEST_CASE("Without a club speed the ball's stands for it, and strike is not told") {
    const auto no_club = [](Shot& s) { s.club_speed.reset(); };
    const Credit c = without_ranges(edited(before, no_club), edited(after, no_club));
    CHECK(c.speed_from_ball);
    CHECK(c.measured[static_cast<std::size_t>(Factor::speed)]);
    CHECK_FALSE(c.measured[static_cast<std::size_t>(Factor::strike)]);
    CHECK(*c[Outcome::carry].fits);
}

TEST_CASE("Without any speed only the start direction is modelled") {
    const auto slow = [](Shot& s) { s.club_speed.reset(), s.ball_speed.reset(); };
    const Credit c = without_ranges(edited(before, slow), edited(after, slow));
    CHECK(c[Outcome::start].modelled);
    CHECK_FALSE(c[Outcome::curve].modelled);
    CHECK_FALSE(c[Outcome::carry].rest);
    CHECK(c[Outcome::carry].measured);
}

TEST_CASE("Nothing to go by gives no credit") {
    CHECK_FALSE(credit({}, after, lesson::setting()));
    const std::vector<Shot> bare(8);
    CHECK_FALSE(credit(bare, bare, lesson::setting()));
}

TEST_CASE("A column counts when at least half of both blocks' shots have it") {
    std::vector<Shot> gaps = after;
    for (std::size_t i = 0; i < 10; ++i)
        gaps[i].loft.reset();
    CHECK(without_ranges(before, gaps).measured[2]);
    gaps[10].loft.reset();
    CHECK_FALSE(without_ranges(before, gaps).measured[2]);
}

TEST_CASE("Resampling is the same every time and its ranges hold the value") {
    const Credit a = *credit(before, after, lesson::setting());
    const Credit b = *credit(before, after, lesson::setting());
    for (std::size_t o = 0; o < outcome_count; ++o)
        for (std::size_t f = 0; f < factor_count; ++f) {
            const Part &p = *a.outcomes[o].shares[f], &q = *b.outcomes[o].shares[f];
            CHECK(p.range->lower == q.range->lower);
            CHECK(p.range->upper == q.range->upper);
            CHECK(p.range->lower <= p.range->upper);
        }
    const Part face = *share(a[Outcome::start], Factor::face);
    CHECK(face.range->lower < face.value);
    CHECK(face.range->upper > face.value);
    CHECK(face.range->upper < 0); // five degrees of face stand out of two degrees of scatter
    const Credit wide = *credit(before, after, lesson::setting(), {1000, 0.95, 20021});
    CHECK(share(wide[Outcome::start], Factor::face)->range->lower <= face.range->lower);
}

TEST_CASE("The ranges are those of the model flown for every resample") {
    for (const double spread : {0.5, 1.0, 2.0})
        for (const std::size_t count : {6u, 12u, 20u}) {
            const auto before = lesson::block(lesson::open_face, 0.97, count, spread);
            const auto after = lesson::block(lesson::square_face, 1, count, spread);
            ball::Resampling flown;
            flown.fly_all = true;
            const auto quick = ball::credit(before, after, lesson::setting());
            const auto full = ball::credit(before, after, lesson::setting(), flown);
            for (std::size_t o = 0; o < ball::outcome_count; ++o)
                for (std::size_t f = 0; f < ball::factor_count; ++f) {
                    const auto &a = *quick->outcomes[o].shares[f],
                               &b = *full->outcomes[o].shares[f];
                    CAPTURE(spread, count, o, f);
                    CHECK(a.value == b.value);
                    // half of what a page shows: 0.05 degrees of start, half a yard of the others
                    const double shown = o == 0 ? 0.05 : 0.45;
                    const double width = b.range->upper - b.range->lower;
                    CHECK(std::abs(a.range->lower - b.range->lower) < shown + 0.05 * width);
                    CHECK(std::abs(a.range->upper - b.range->upper) < shown + 0.05 * width);
                }
        }
}

TEST_CASE("Fewer than five shots a side give no ranges") {
    const std::vector<Shot> few(before.begin(), before.begin() + 4);
    const Credit c = *credit(few, after, lesson::setting());
    CHECK_FALSE(c[Outcome::start].modelled->range);
    CHECK(c[Outcome::start].modelled);
}

TEST_CASE("A mirrored lesson gets mirrored credit, exactly") {
    const auto mirror = [](Shot& s) {
        s.face = -*s.face, s.path = -*s.path, s.start = -*s.start;
        s.curve = -*s.curve, s.offline = -*s.offline;
    };
    const Credit a = without_ranges(before, after);
    const Credit b = without_ranges(edited(before, mirror), edited(after, mirror));
    for (std::size_t f = 0; f < factor_count; ++f) {
        CHECK(a[Outcome::curve].shares[f]->value == -b[Outcome::curve].shares[f]->value);
        CHECK(a[Outcome::start].shares[f]->value == -b[Outcome::start].shares[f]->value);
        CHECK(a[Outcome::carry].shares[f]->value == b[Outcome::carry].shares[f]->value);
    }
}

TEST_CASE("A given share is used as it is; without a face to path there is nothing to fit") {
    Setting given = lesson::setting();
    given.head.face_share = FaceShare{0.69, "Wood, Henrikson & Broadie 2018, seven-iron"};
    const Credit c = *credit(before, after, given, {0, 0.8, 1});
    CHECK(c.share_origin == ShareOrigin::given);
    CHECK(c.face_share == 0.69);
    const Delivery along{{1}, {0}, {-4}, {28}, {36}};
    CHECK(
        without_ranges(lesson::block(along, 1, 5, 0), lesson::block(along, 1, 5, 0)).share_origin ==
        ShareOrigin::geometry);
}

TEST_CASE("The credit of a lesson is the credit of a fine-stepped flight within 0.1 m") {
    // The coalitions fly with the coarse step; the same two ends with the fine one.
    const Credit c = without_ranges(lesson::block(lesson::open_face, 0.97, 5, 0),
                                    lesson::block(lesson::square_face, 1.0, 5, 0));
    Setting s = lesson::setting();
    const Shot a = lesson::shot(lesson::open_face, 0.97, s);
    const Shot b = lesson::shot(lesson::square_face, 1.0, s);
    CHECK(c[Outcome::carry].modelled->value == Approx((*b.carry - *a.carry).value).margin(0.1));
    CHECK(c[Outcome::curve].modelled->value == Approx((*b.curve - *a.curve).value).margin(0.1));
}
