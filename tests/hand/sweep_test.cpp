// Poses over a coarse grid of everything that can be recorded.
#include "hand/curve.hpp"
#include "hand/hand.hpp"
#include "hand/pose.hpp"

#include <catch2/catch.hpp>

#include <cmath>

using namespace hand;

namespace {

template <class F>
void each_wish(const std::vector<double>& knuckles, F&& f) {
    for (const Build build : {Build::large, Build::small, Build::child}) {
        for (int lay = 0; lay < 3; ++lay) {
            for (const double n : knuckles) {
                for (int thumb = 0; thumb < 3; ++thumb) {
                    for (int rest = 0; rest < 4; ++rest) {
                        Wish w;
                        w.build = build;
                        w.seen.lay = static_cast<unit::Lay>(lay);
                        w.seen.knuckles = n;
                        w.seen.thumb_side = static_cast<unit::ThumbSide>(thumb);
                        w.seen.thumb_length = static_cast<unit::ThumbLength>((thumb + rest) % 3);
                        w.seen.heel_pad = static_cast<unit::HeelPad>(rest / 2);
                        w.seen.gap = rest % 2 == 1;
                        w.glove = (lay + thumb) % 2;
                        f(w);
                    }
                }
            }
        }
    }
}

void check_facts(const Wish& w) {
    const auto p = pose(w);
    const Facts f = facts(*p);
    if (!f.contradiction) CHECK(f.knuckles == int(std::floor(*w.seen.knuckles)));
    CHECK(std::isfinite(f.v.value));
    CHECK(f.gap_mm >= 0);
    CHECK(f.held_share >= 0);
    CHECK(f.held_share <= 1);
    for (const Contact& c : f.contacts) {
        for (const double d : {c.first, c.middle, c.end}) {
            CHECK(std::isfinite(d));
            CHECK(d > -4); // never through the handle
        }
    }
    const Limbs& l = p->lead();
    const Vec tip = l.to_grip(l.thumb[3]);
    CHECK(tip.z > 0); // never behind the handle
}

void check_drawing(const Picture& p) {
    for (const auto& m : p.marks) {
        const Area* a = std::get_if<Area>(&m);
        if (!a) continue;
        for (const Outline& o : a->loops) {
            REQUIRE(!o.pieces.empty());
            CHECK(o.closed);
            CHECK(length(o.pieces.back().to - o.start) < .01);
        }
    }
    const Area* skin = nullptr;
    for (const auto& m : p.marks) {
        const Area* a = std::get_if<Area>(&m);
        if (a && a->tone == Tone::skin && !skin) skin = a;
    }
    REQUIRE(skin);
    int large = 0;
    for (const Outline& o : skin->loops)
        large += std::abs(area(flattened(o))) > 1200;
    CHECK(large >= 1);
}

} // namespace

TEST_CASE("Recorded holds of every build give sound facts") {
    int i = 0;
    each_wish({0, 2, 4}, [&](const Wish& w) {
        if (++i % 5 == 0) check_facts(w);
    });
}

TEST_CASE("Recorded holds of every build are drawn without a hole") {
    constexpr View views[]{View::golfers_eye, View::butt_end, View::balance, View::fingers_first,
                           View::open_palm};
    int i = 0;
    each_wish({1, 3}, [&](const Wish& w) {
        if (++i % 9 == 0) check_drawing(draw(*pose(w), views[i / 9 % 5]));
    });
}

TEST_CASE("A fine sweep of recorded holds gives sound facts and drawings", "[.sweep]") {
    int i = 0;
    each_wish({0, .5, 1, 1.5, 2, 2.5, 3, 3.5, 4}, [&](const Wish& w) {
        check_facts(w);
        if (++i % 5 == 0) check_drawing(draw(*pose(w), View::golfers_eye));
    });
}
