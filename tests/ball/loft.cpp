#include "ball/effective_loft.hpp"
#include "ball/flight.hpp"
#include "ball/next_step.hpp"
#include "lesson.hpp"

#include <catch2/catch.hpp>

using namespace ball;

namespace {

// Lofts and lies: common practice, no source.
const std::vector<Club> bag{{"5i", {27}, {61.5}}, {"6i", {30}, {62}},   {"7i", {34}, {62.5}},
                            {"8i", {38}, {63}},   {"9i", {42}, {63.5}}, {"pw", {46}, {64}}};
const Club& seven = bag[2];

} // namespace

TEST_CASE("A measured loft is taken before an estimate, and an estimate before the face") {
    LoftEvidence e;
    CHECK(effective_loft(e, seven, {}).origin == LoftOrigin::unknown);
    e.face = {4};
    CHECK(effective_loft(e, seven, {}).origin == LoftOrigin::from_face);
    e.launch = {20}, e.attack = {-4};
    CHECK(effective_loft(e, seven, {}).origin == LoftOrigin::from_face);
    e.club_speed = {36};
    CHECK(effective_loft(e, seven, {}).origin == LoftOrigin::from_launch);
    e.loft = {29};
    const EffectiveLoft measured = effective_loft(e, seven, {});
    CHECK(measured.origin == LoftOrigin::measured);
    CHECK(measured.loft.lower == measured.loft.upper);
}

TEST_CASE("The loft estimated from a launch is the loft that launched it") {
    const Head head = lesson::seven_iron();
    const Delivery d{{0}, {0}, {-4}, {28}, {36}};
    const Launch launch = strike(d, head);
    LoftEvidence e;
    e.launch = launch.elevation, e.attack = d.attack, e.club_speed = d.club_speed;
    const EffectiveLoft by_club = effective_loft(e, seven, head);
    CHECK(by_club.loft.value.value == Approx(28).margin(1e-6));
    CHECK(by_club.loft.lower.value < 28);
    CHECK(by_club.loft.upper.value > 28);
    e.club_speed.reset(), e.ball_speed = launch.speed;
    CHECK(effective_loft(e, seven, head).loft.value.value == Approx(28).margin(0.1));
    CHECK_FALSE(loft_from_launch({89}, {0}, {36}, head));
}

TEST_CASE("A club speed is found again from the ball speed") {
    const Delivery d{{2}, {-1}, {-4}, {28}, {36}};
    CHECK(club_speed_for(strike(d, {}).speed, d, {}).value == Approx(36).margin(1e-6));
}

TEST_CASE("A seven-iron opened by a dozen degrees plays one to two clubs weaker") {
    // Common practice, no source.
    LoftEvidence e;
    e.face = {12};
    const double rungs = plays_like(effective_loft(e, seven, {}).loft.value, bag)->rung -
                         plays_like(seven.loft, bag)->rung;
    CHECK(rungs >= 1);
    CHECK(rungs <= 2);
}

TEST_CASE("A loft between two clubs plays between them, near one it plays like that one") {
    CHECK(plays_like({34}, bag)->lower == 2);
    CHECK_FALSE(plays_like({35}, bag)->between());
    const PlaysLike between = *plays_like({40}, bag);
    CHECK(between.between());
    CHECK(bag[between.lower].key == "8i");
    CHECK(bag[between.upper].key == "9i");
    CHECK(between.rung == 3.5);
    CHECK(plays_like({41}, bag)->lower == 4);
    CHECK_FALSE(plays_like({47}, bag)->beyond);
    CHECK(plays_like({48}, bag)->beyond);
    CHECK(plays_like({20}, bag)->beyond);
    CHECK(plays_like({20}, bag)->lower == 0);
    CHECK_FALSE(plays_like({30}, {}));
}

TEST_CASE("The order of the bag does not matter, and of equal lofts the first counts") {
    const std::vector<Club> jumbled{{"9i", {42}, {}}, {"7w", {21}, {}}, {"4i", {21}, {}}};
    CHECK(jumbled[plays_like({21}, jumbled)->lower].key == "7w");
    const PlaysLike p = *plays_like({31}, jumbled);
    CHECK(jumbled[p.lower].key == "7w");
    CHECK(jumbled[p.upper].key == "9i");
    const std::vector<Club> one{{"7i", {34}, {}}};
    CHECK(plays_like({34}, one)->lower == 0);
}

TEST_CASE("A face estimated from start and path comes with the published shares' range") {
    // Inverse of start = path + share (face - path).
    const Estimate e = face_from_start({1}, {-2}, 0.75);
    CHECK(e.value.value == Approx(2));
    CHECK(e.lower.value == Approx(-2 + 3 / 0.83));
    CHECK(e.upper.value == Approx(-2 + 3 / 0.61));
}

TEST_CASE("Face and path are found again from start and curve") {
    const Head head = lesson::seven_iron();
    const double face = GENERATE(3.0, -2.0, 0.5), path = GENERATE(-2.0, 4.0);
    const Delivery d{{face}, {path}, {-4}, {28}, {36}};
    const Launch launch = strike(d, head);
    const Flight f = fly(launch, {});
    const FaceAndPath found = *face_and_path(launch.start, f.curve, d, head, {});
    CHECK(found.face.value.value == Approx(face).margin(0.1));
    CHECK(found.path.value.value == Approx(path).margin(0.1));
    CHECK(found.face.lower <= found.face.value);
    CHECK(found.path.upper >= found.path.value);
    CHECK((found.path.upper - found.path.lower).value > 0.3 * std::abs(face - path));
    CHECK((found.face.upper - found.face.lower).value > 0.2 * std::abs(face - path));
    CHECK_FALSE(face_and_path({0}, {300}, d, head, {}));
}

TEST_CASE("What is left belongs to the face when the face is what is left") {
    const Head head = lesson::seven_iron();
    const auto next = [&](double face, double path) {
        return what_next({{face}, {path}, {-4}, {28}, {36}}, head, {});
    };
    CHECK(next(4, 0).step == NextStep::mostly_face);
    CHECK(next(4, 0).face == Approx(1));
    CHECK(next(4, 0).path == Approx(0).margin(1e-9));
    CHECK(next(0, -5).step == NextStep::mostly_path);
    CHECK(next(0.2, 0.1).step == NextStep::little_left);
    CHECK(next(0, 0).face == 0);
    const Remaining mixed = next(3, -4);
    CHECK(mixed.face + mixed.path == Approx(1));
    CHECK(mixed.step == NextStep::both);
    CHECK(mixed.curve.value > 0);
    CHECK(next(-3, 4).face == mixed.face);
    CHECK(next(-3, 4).curve == -mixed.curve);
}

TEST_CASE("A wanted push is no miss") {
    const Remaining r = what_next({{2}, {3}, {-4}, {28}, {36}}, lesson::seven_iron(), {}, {2}, {3});
    CHECK(r.step == NextStep::little_left);
    CHECK(r.miss.value == 0);
}

TEST_CASE("Wind is no miss of the player's") {
    Air air;
    air.wind = {{0}, {9}};
    CHECK(what_next({{0}, {0}, {-4}, {28}, {36}}, lesson::seven_iron(), air).miss.value ==
          Approx(0).margin(1e-9));
}
