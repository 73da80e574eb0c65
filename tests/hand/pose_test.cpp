#include "hand/pose.hpp"

#include <catch2/catch.hpp>

using namespace hand;

namespace {

Limbs turned(double lay, double turn) {
    Hold h;
    h.lay = lay;
    h.turn = turn;
    return solve(anatomy(Build::large), h);
}

Wish wish(unit::Lay lay, double knuckles) {
    Wish w;
    w.seen.lay = lay;
    w.seen.knuckles = knuckles;
    return w;
}

} // namespace

TEST_CASE("A stronger turn never shows fewer knuckles, and the V turns with it") {
    for (const double lay : {0.0, .5, 1.0}) {
        int last = -1;
        double v = -1e9;
        for (int turn = -20; turn <= 40; turn += 5) {
            const Limbs l = turned(lay, turn);
            const auto views = knuckle_views(l);
            CHECK(knuckle_count(views) >= last);
            CHECK(v_degrees(l) > v);
            if (lay == 0) CHECK(views[index_finger].share >= views[middle_finger].share - .05);
            last = knuckle_count(views);
            v = v_degrees(l);
        }
        CHECK(last == 4);
    }
}

// Our own convention, pinned so that a change to the hand does not shift what a count means.
TEST_CASE("Turns of -10, 0 and 10 degrees read one, two and three knuckles in the fingers") {
    CHECK(knuckle_count(knuckle_views(turned(0, -10))) == 1);
    CHECK(knuckle_count(knuckle_views(turned(0, 0))) == 2);
    CHECK(knuckle_count(knuckle_views(turned(0, 10))) == 3);
}

TEST_CASE("The drawn hand shows the number of knuckles that was recorded") {
    for (const unit::Lay lay : {unit::Lay::fingers, unit::Lay::between, unit::Lay::palm}) {
        for (const double n : {0., 1., 2., 3., 4.}) {
            CHECK(facts(*pose(wish(lay, n))).knuckles == int(n));
        }
    }
}

TEST_CASE("Half a knuckle turns the hand between its neighbours") {
    const auto turn = [](double n) { return pose(wish(unit::Lay::fingers, n))->hold().turn; };
    CHECK(turn(2) < turn(2.5));
    CHECK(turn(2.5) < turn(3));
}

TEST_CASE("The handle lies across the fingers at the recorded angle") {
    CHECK(facts(*pose(wish(unit::Lay::fingers, 2))).lay.value == Approx(90).margin(1));
    CHECK(facts(*pose(wish(unit::Lay::between, 2))).lay.value == Approx(69).margin(1));
    CHECK(facts(*pose(wish(unit::Lay::palm, 2))).lay.value == Approx(48).margin(1));
}

TEST_CASE("Finger-held, every phalanx of three fingers touches and none is driven in") {
    for (const Contact& c : facts(*pose(wish(unit::Lay::fingers, 2))).contacts) {
        for (const double d : {c.first, c.middle, c.end}) {
            CHECK(d > -2);
            CHECK(d < 1.5);
        }
    }
}

TEST_CASE("A gap is measured when a gap was recorded, and less of the handle is held") {
    Wish closed = wish(unit::Lay::palm, 2), open = closed;
    open.seen.gap = true;
    CHECK(facts(*pose(closed)).gap_mm < .6);
    CHECK(facts(*pose(open)).gap_mm > 3);
    CHECK(facts(*pose(wish(unit::Lay::fingers, 2))).held_share >
          facts(*pose(open)).held_share + .2);
    double last = -1;
    for (const double lift : {0., 4., 8., 12., 16.}) {
        Hold h;
        h.lay = 1;
        h.gap = lift;
        const double gap = butt_contact(solve(anatomy(Build::large), h)).gap;
        CHECK(gap >= last);
        last = gap;
    }
}

TEST_CASE("The balance check follows from forces: the pad above the handle, the crook below") {
    Wish held = wish(unit::Lay::fingers, 2), palm = wish(unit::Lay::palm, 2);
    CHECK(facts(*pose(held)).rests);
    CHECK_FALSE(facts(*pose(palm)).rests);
    held.seen.gap = true; // no pad, no counterweight
    CHECK_FALSE(facts(*pose(held)).rests);
}

TEST_CASE("The pad's force is the lever law's") {
    const Balance b = pose(wish(unit::Lay::fingers, 2))->balance();
    // 0.41 kg at 0.72 m from the butt, moments about the forefinger.
    const double want = .41 * 9.81 * (720 - b.finger_station) / (b.finger_station - b.pad_station);
    CHECK(b.pad_force == Approx(want));
}

TEST_CASE("A record that contradicts itself is named, and the hand follows the knuckles") {
    Wish w = wish(unit::Lay::fingers, 1);
    w.seen.v = unit::VPoint::trail_shoulder;
    const Facts f = facts(*pose(w));
    CHECK(f.contradiction);
    CHECK(f.contradiction_key == "knuckles-v");
    CHECK(f.knuckles == 1);
    w.seen.v = unit::VPoint::chin;
    CHECK_FALSE(facts(*pose(w)).contradiction);
    Wish b = wish(unit::Lay::palm, 2);
    b.seen.balance = unit::Balance::stays;
    CHECK(facts(*pose(b)).contradiction_key == "lay-balance");
}

TEST_CASE("A V without a knuckle count turns the hand to that V") {
    for (int v = 0; v < 5; ++v) {
        Wish w;
        w.seen.v = static_cast<unit::VPoint>(v);
        CHECK(facts(*pose(w)).v_points == *w.seen.v);
    }
}

TEST_CASE("What nobody looked at comes from the target") {
    Wish w;
    w.target.knuckles = 3;
    CHECK(facts(*pose(w)).knuckles == 3);
    w.seen.knuckles = 1;
    CHECK(facts(*pose(w)).knuckles == 1);
}

TEST_CASE("The thumb's pad lies on the upper half of the handle, within reach") {
    for (const double lay : {0.0, 1.0}) {
        for (int turn = -20; turn <= 40; turn += 10) {
            const Limbs l = turned(lay, turn);
            CHECK(l.to_grip(l.thumb[3]).z > 0);
            const double touch = l.handle.clear(l.thumb[3], l.body.thumb_radius[3]);
            CHECK(touch > -2);
            CHECK(touch < 1);
            CHECK(length(l.thumb[1] - l.thumb[0]) == Approx(l.body.thumb[0]).margin(.5));
        }
    }
}

TEST_CASE("The hands never pass through each other, however they join") {
    for (const auto join : {unit::Join::overlap, unit::Join::interlock, unit::Join::ten_finger}) {
        Wish w;
        w.join = join;
        const BothHands both = pose(w)->both_hands();
        const Limbs* one[] = {&both.lead};
        const Field lead(one, {{ex, ey, ez}}, Field::Parts::flesh);
        double worst = 1e9;
        for (const PosedFinger& f : both.trail.finger) {
            for (int j = 0; j < 3; ++j) {
                for (int i = 2; i <= 6; ++i) {
                    const Vec p = both.trail.to_grip(lerp(f.joint[j], f.joint[j + 1], i / 6.0));
                    worst = std::min(worst, lead.distance(p));
                }
            }
        }
        CHECK(worst > 1); // no bone of a trail finger inside the lead hand
    }
}

TEST_CASE("No trail finger presses deeper than a millimetre into the lead hand") {
    for (const double knuckles : {1., 2., 3., 4.}) {
        for (const auto join :
             {unit::Join::overlap, unit::Join::interlock, unit::Join::ten_finger}) {
            Wish w;
            w.join = join;
            w.seen.knuckles = knuckles;
            const auto p = pose(w);
            const BothHands& both = p->both_hands();
            const Limbs* one[] = {&both.lead};
            const Field lead(one, {{ex, ey, ez}}, Field::Parts::flesh);
            double deepest = 1e9;
            for (const Capsule& c : flesh(both.trail)) {
                if (c.surface == palm_side) continue; // folds round the lead thumb
                for (int i = 0; i <= 6; ++i) {
                    const Vec at = both.trail.to_grip(lerp(c.a, c.b, i / 6.0));
                    deepest = std::min(deepest, lead.distance(at) - mix(c.ra, c.rb, i / 6.0));
                }
            }
            INFO(knuckles << " knuckles, join " << int(join));
            CHECK(deepest > -1);
            if (join == unit::Join::interlock) // hooked, not stretched over the other hand
                CHECK(both.lead.finger[index_finger].angle[0] > 5);
        }
    }
}
