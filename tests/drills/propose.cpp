// One test a row of the selection table: what is seen, what is proposed.
#include "drills/propose.hpp"

#include <catch2/catch.hpp>

using drills::HoldFault;
using drills::Middle;
using drills::Observed;
using Ids = std::vector<std::string>;

namespace {

/// Ten shots, hold looked at and in order, everything in its place.
Observed calm() {
    Observed seen;
    seen.shots = 10;
    seen.hold_looked_at = true;
    seen.face = seen.path = seen.start = Middle{0.2, -0.5, 0.9};
    seen.loft_above = 0;
    seen.carry = Middle{130, 126, 134};
    seen.club_speed = Middle{34, 33.6, 34.4};
    seen.club_speed_drift = 0;
    return seen;
}

void expect(const Observed& seen, const Ids& ids, const std::string& reason) {
    const auto proposal = drills::propose(seen);
    CHECK(proposal.ids == ids);
    CHECK(proposal.reason == reason);
}

} // namespace

TEST_CASE("a failed hold check comes first, and names its second drill") {
    auto seen = calm();
    seen.face = Middle{6, 5, 7};
    const std::pair<HoldFault, Ids> table[] = {
        {HoldFault::lay, {"H1"}},
        {HoldFault::gap, {"H1", "H4"}},
        {HoldFault::knuckles, {"H1", "H3"}},
        {HoldFault::v, {"H1", "H3"}},
        {HoldFault::pad, {"H1", "H2"}},
        {HoldFault::balance, {"H1", "H2"}},
        {HoldFault::join, {"H1", "H6"}},
        {HoldFault::thumb, {"H1", "H6"}},
        {HoldFault::square, {"H1"}},
        {HoldFault::order, {"H1"}},
    };
    for (const auto& [fault, ids] : table) {
        seen.hold_faults = {fault};
        expect(seen, ids, "reason.hold");
    }
    seen.hold_faults = {HoldFault::knuckles, HoldFault::gap};
    expect(seen, {"H1", "H4"}, "reason.hold");
}

TEST_CASE("a hold check needs no shots") {
    Observed seen;
    seen.hold_faults = {HoldFault::gap};
    expect(seen, {"H1", "H4"}, "reason.hold");
}

TEST_CASE("a face off to one side is worked on before anything of the path") {
    auto seen = calm();
    seen.face = Middle{2.0, 0.8, 3.1};
    expect(seen, {"F1", "F3"}, "reason.face-off");
    seen.face = Middle{-2.4, -3.1, -0.8};
    seen.start = Middle{-2.2, -3, -1};
    expect(seen, {"F1", "F4"}, "reason.face-off");
    seen.face = Middle{1.9, 0.8, 3.1};
    seen.start = calm().start;
    expect(seen, {}, "reason.none");
}

TEST_CASE("a face that goes both ways is a matter of the same hold each time") {
    auto seen = calm();
    seen.face = Middle{0.3, -2.2, 2.3};
    expect(seen, {"H5", "F6"}, "reason.face-spread");
    seen.face = Middle{2.3, -0.5, 4.3}; // off, but on both sides of nought
    expect(seen, {"H5", "F6"}, "reason.face-spread");
    seen.face = Middle{0, -2, 2}; // four degrees are not more than four
    expect(seen, {}, "reason.none");
}

TEST_CASE("a fine face with an off start line asks for the aim") {
    auto seen = calm();
    seen.start = Middle{2.5, 2, 3};
    expect(seen, {"A1", "F4"}, "reason.aim");
}

TEST_CASE("path comes only when the face is fine, and knows the player's own sides") {
    auto seen = calm();
    seen.path = Middle{-4, -5, -3};
    expect(seen, {"P1", "P2"}, "reason.path");
    seen.hand = unit::Hand::left;
    expect(seen, {"P1", "P4"}, "reason.path");
    seen.path = Middle{4, 3, 5};
    expect(seen, {"P1", "P2"}, "reason.path");
    seen.hand = unit::Hand::right;
    expect(seen, {"P1", "P4"}, "reason.path");
    seen.path = Middle{3.9, 3, 5};
    expect(seen, {}, "reason.none");
}

TEST_CASE("face and path off to the same side are probably aim") {
    auto seen = calm();
    seen.face = Middle{4, 3, 5};
    seen.path = Middle{3.5, 3, 4};
    expect(seen, {"A1", "F1"}, "reason.aim-both");
    seen.path = Middle{7, 6, 8}; // not near equal
    expect(seen, {"F1", "F3"}, "reason.face-off");
}

TEST_CASE("face and path off to opposite sides: one drill for the face, path is measured again") {
    auto seen = calm();
    seen.face = Middle{4.6, 4, 5};
    seen.path = Middle{-4.2, -5, -3};
    expect(seen, {"F1"}, "reason.path-reacts");
    seen.hold_looked_at = false;
    expect(seen, {"H1"}, "reason.path-reacts");
}

TEST_CASE("high loft goes with an open face before it is a matter of its own") {
    auto seen = calm();
    seen.loft_above = 2;
    seen.face = Middle{1.5, 1, 2};
    expect(seen, {"F1", "H1"}, "reason.loft-face");
    seen.hand = unit::Hand::left; // right of target is closed for a left-hander
    expect(seen, {"L1", "S1"}, "reason.loft");
    seen.face = Middle{-1.5, -2, -1};
    expect(seen, {"F1", "H1"}, "reason.loft-face");
    seen.face = calm().face;
    expect(seen, {"L1", "S1"}, "reason.loft");
}

TEST_CASE("wide carry with steady speed is strike; with unsteady speed it is not") {
    auto seen = calm();
    seen.carry = Middle{130, 115, 136};
    expect(seen, {"S4", "S1"}, "reason.strike");
    seen.club_speed = Middle{34, 32, 36};
    expect(seen, {}, "reason.none");
}

TEST_CASE("falling club speed asks for rest, not for a drill") {
    auto seen = calm();
    seen.club_speed_drift = -1.5;
    expect(seen, {}, "reason.tired");
}

TEST_CASE("speed drills are for adults whose numbers are in range") {
    auto seen = calm();
    seen.speed_wanted = true;
    expect(seen, {"V1", "V2"}, "reason.speed");
    seen.junior = true;
    expect(seen, {}, "reason.none");
    seen.junior = false;
    seen.face.reset(); // not measured is not in range
    expect(seen, {}, "reason.none");
}

TEST_CASE("pain ends every proposal") {
    auto seen = calm();
    seen.pain = true;
    seen.hold_faults = {HoldFault::gap};
    const auto proposal = drills::propose(seen);
    CHECK(proposal.ids.empty());
    CHECK(proposal.next.empty());
    CHECK(proposal.reason == "reason.pain");
}

TEST_CASE("fewer than five shots leave the choice to the coach") {
    auto seen = calm();
    seen.shots = 4;
    seen.face = Middle{8, 7, 9};
    expect(seen, {"H5"}, "reason.first-look");
    expect(Observed{}, {"H5"}, "reason.first-look");
    Observed child;
    child.junior = true; // no kettle
    expect(child, {"H1"}, "reason.first-look");
    CHECK(std::ranges::count(propose(child).next, "H5") == 0);
}

TEST_CASE("three more are offered, none twice") {
    auto seen = calm();
    seen.face = Middle{3, 2, 7};
    seen.loft_above = 2;
    const auto proposal = drills::propose(seen);
    CHECK(proposal.ids == Ids{"F1", "F3"});
    CHECK(proposal.next == Ids{"H5", "F6", "H1"});
    CHECK(drills::propose(calm()).next == Ids{"H5", "F6", "A1"});
}

TEST_CASE("inside a range that the coach wants nothing is off, however wide it is") {
    auto seen = calm();
    seen.face = Middle{2.6, 1.5, 3.4};
    expect(seen, {"F1", "F3"}, "reason.face-off");
    seen.face_half = 3;
    expect(seen, {}, "reason.none");
    seen.path = Middle{4.5, 4, 5};
    seen.path_half = 5;
    expect(seen, {}, "reason.none");
    seen.path_half = 2;
    expect(seen, {"P1", "P4"}, "reason.path");
}
