#include "hand/curve.hpp"
#include "hand/pose.hpp"
#include "hand/trace.hpp"

#include <catch2/catch.hpp>

using namespace hand;

TEST_CASE("The distance never grows faster than the way walked") {
    const Limbs l = solve(anatomy(Build::large), {});
    const Limbs* one[] = {&l};
    const Field field(one, {{ex, ey, ez}});
    unsigned seed = 12345;
    const auto next = [&] {
        return double((seed = seed * 1664525u + 1013904223u) >> 8) / (1 << 24);
    };
    for (int i = 0; i < 4000; ++i) {
        const Vec p{next() * 220 - 40, next() * 160 - 80, next() * 160 - 80};
        const Vec step = unit_vector({next() - .5, next() - .5, next() - .5}) * .5;
        CHECK(std::abs(field.distance(p + step) - field.distance(p)) < .5 * 1.03 + 1e-3);
    }
}

TEST_CASE("The traced depth lies on the surface") {
    const Limbs l = solve(anatomy(Build::large), {});
    const Limbs* one[] = {&l};
    const Field field(one, players_camera());
    const Vec c = players_camera() * Vec{80, 0, 0};
    const Depth d = trace(field, {c.x - 50, c.y + 60, 100, 120}, .6);
    int hits = 0, off = 0;
    for (int r = 0; r < d.id.height; ++r) {
        for (int k = 0; k < d.id.width; ++k) {
            if (d.id(r, k) < 0) continue;
            ++hits;
            off += std::abs(field.distance(d.point(r, k))) > .35;
        }
    }
    CHECK(hits > 5000);
    CHECK(off < hits / 100);
}

TEST_CASE("Fitted pieces stay within the tolerance of their points") {
    Polyline wave;
    for (int i = 0; i <= 300; ++i)
        wave.push_back({i * .2, 8 * std::sin(i * .05)});
    const Outline o = fitted(wave, .14, false);
    CHECK(o.pieces.size() < 12);
    const Polyline dense = flattened(o, 60);
    for (const Dot p : wave) {
        double best = 1e9;
        for (const Dot q : dense)
            best = std::min(best, length(q - p));
        CHECK(best < .14 + .06);
    }
}
