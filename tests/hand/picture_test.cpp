#include "hand/curve.hpp"
#include "hand/hand.hpp"
#include "svg.hpp"

#include <catch2/catch.hpp>

#include <cmath>

using namespace hand;

namespace {

constexpr View all_views[]{View::open_palm,    View::fingers_first, View::golfers_eye,
                           View::butt_end,     View::balance,       View::joined,
                           View::joined_front, View::thumb_short,   View::thumb_long};

Wish plain(double knuckles, unit::Lay lay = unit::Lay::fingers) {
    Wish w;
    w.seen.knuckles = knuckles;
    w.seen.lay = lay;
    return w;
}

bool finite(const Outline& o) {
    bool ok = std::isfinite(o.start.x) && std::isfinite(o.start.y);
    for (const Cubic& c : o.pieces) {
        for (const Dot d : {c.a, c.b, c.to})
            ok = ok && std::isfinite(d.x) && std::isfinite(d.y);
    }
    return ok;
}

/// Everything finite, fills closed, no stray dots among the lines.
void check_sound(const Picture& p) {
    double skin = 0;
    for (const auto& m : p.marks) {
        if (const Area* a = std::get_if<Area>(&m)) {
            for (const Outline& o : a->loops) {
                REQUIRE(finite(o));
                CHECK(o.closed);
                if (a->tone == Tone::skin) skin += area(flattened(o));
                REQUIRE(!o.pieces.empty());
                CHECK(length(o.pieces.back().to - o.start) < .01);
            }
        } else {
            const Line& l = std::get<Line>(m);
            REQUIRE(finite(l.path));
            const double long_enough = arc_length(flattened(l.path)).back();
            if (l.pen == Pen::outline || l.pen == Pen::inner) CHECK(long_enough > .9);
        }
    }
    CHECK(skin > 1500);
}

int knuckle_anchors(const Picture& p) {
    int n = 0;
    for (const Anchor& a : p.anchors)
        n += a.name.rfind("knuckle", 0) == 0;
    return n;
}

} // namespace

TEST_CASE("Every view is drawn sound, small and with its anchors inside the window") {
    const auto p = pose(plain(2));
    for (const View view : all_views) {
        const Picture picture = draw(*p, view);
        check_sound(picture);
        CHECK(look::path_bytes(picture) < 32000); // before compression
        CHECK(!picture.anchors.empty());
        for (const Anchor& a : picture.anchors) {
            CHECK(a.at.x > 0);
            CHECK(a.at.x < picture.width);
            CHECK(a.at.y > 0);
            CHECK(a.at.y < picture.height);
        }
    }
}

TEST_CASE("The same view has the same window whatever the pose") {
    const auto weak = pose(plain(1, unit::Lay::palm)), strong = pose(plain(4));
    for (const View view : {View::golfers_eye, View::butt_end, View::open_palm}) {
        const Picture a = draw(*weak, view), b = draw(*strong, view);
        CHECK(a.width == b.width);
        CHECK(a.height == b.height);
    }
}

TEST_CASE("Two drawings of one pose are equal to the bit") {
    CHECK(draw(*pose(plain(3)), View::golfers_eye) == draw(*pose(plain(3)), View::golfers_eye));
}

TEST_CASE("A mirrored picture is the exact reflection and mirrors back") {
    const Picture p = draw(*pose(plain(2)), View::golfers_eye), m = mirrored(p);
    REQUIRE(m.marks.size() == p.marks.size());
    CHECK(m.anchors[0].at.x == p.width - p.anchors[0].at.x);
    CHECK(m.anchors[0].at.y == p.anchors[0].at.y);
    const Area &a = std::get<Area>(p.marks[0]), &b = std::get<Area>(m.marks[0]);
    CHECK(b.loops[0].start.x == p.width - a.loops[0].start.x);
    const Picture back = mirrored(m);
    for (std::size_t i = 0; i < p.anchors.size(); ++i) {
        CHECK(back.anchors[i].at.x == Approx(p.anchors[i].at.x).margin(1e-9));
    }
}

TEST_CASE("The golfer's eye marks exactly the counted knuckles") {
    for (const double n : {1., 2., 3., 4.}) {
        const auto p = pose(plain(n));
        CHECK(knuckle_anchors(draw(*p, View::golfers_eye)) == facts(*p).knuckles);
    }
}

TEST_CASE("Each knuckle that counts has one half-arc, and no other has") {
    for (const Build build : {Build::large, Build::small, Build::child}) {
        for (const unit::Lay lay : {unit::Lay::fingers, unit::Lay::palm}) {
            for (int n = 0; n <= 8; ++n) {
                Wish w = plain(n / 2., lay);
                w.build = build;
                const auto p = pose(w);
                const Picture picture = draw(*p, View::golfers_eye);
                int arcs = 0;
                for (const auto& mark : picture.marks) {
                    const Line* l = std::get_if<Line>(&mark);
                    if (l && l->pen == Pen::knuckle) ++arcs;
                }
                INFO("build " << int(build) << ", lay " << int(lay) << ", " << n / 2.);
                CHECK(arcs == facts(*p).knuckles);
            }
        }
    }
}

TEST_CASE("The leading edge turns with the face") {
    Wish square = plain(2), open = square;
    open.face_degrees = 20;
    CHECK_FALSE(draw(*pose(square), View::golfers_eye) == draw(*pose(open), View::golfers_eye));
    const auto edge = [](const Wish& w) {
        const Picture p = draw(*pose(w), View::golfers_eye);
        for (const Anchor& a : p.anchors) {
            if (a.name == "leading edge") return a.at.x;
        }
        return -1.0;
    };
    CHECK(edge(open) > edge(square) + 2); // toe of an open face leans to the right
}

TEST_CASE("A glove is drawn on the lead hand only when worn") {
    const auto gloved = [](bool on) {
        Wish w = plain(2);
        w.glove = on;
        int n = 0;
        for (const auto& m : draw(*pose(w), View::golfers_eye).marks) {
            if (const Area* a = std::get_if<Area>(&m)) n += a->tone == Tone::glove;
        }
        return n;
    };
    CHECK(gloved(true) == 1);
    CHECK(gloved(false) == 0);
}

TEST_CASE("The strip runs from no knuckle to four") {
    for (const double n : {0., 1., 2., 3., 4.}) {
        CHECK(knuckle_anchors(strip(n, Build::large, false)) == int(n));
    }
}

TEST_CASE("No tone of the golfer's eye has an island or a hole too small to be read") {
    for (const Build build : {Build::large, Build::child}) {
        for (int n = 0; n <= 8; ++n) {
            Wish w = plain(n / 2., n % 2 ? unit::Lay::palm : unit::Lay::fingers);
            w.build = build;
            for (const auto& mark : draw(*pose(w), View::golfers_eye).marks) {
                const Area* a = std::get_if<Area>(&mark);
                if (!a) continue;
                const double least = a->tone == Tone::handle ? 60 : a->tone == Tone::shade ? 40 : 0;
                for (const Outline& o : a->loops) {
                    INFO("build " << int(build) << ", " << n / 2. << " knuckles");
                    CHECK(std::abs(area(flattened(o))) > least);
                    if (a->tone == Tone::handle_shade && area(flattened(o)) < 0)
                        CHECK(area(flattened(o)) < -90); // a light island in the shadow
                }
            }
        }
    }
}
