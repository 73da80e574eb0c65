// Holds over a grid of everything that can be recorded: poses, what is read off them, drawings.
#include "hand/pose.hpp"
#include "soundness.hpp"

#include <catch2/catch.hpp>

#include <cmath>

using namespace hand;

namespace {

template <class F>
void each_wish(const std::vector<double>& knuckles, F&& f) {
    for (const Build build : {Build::large, Build::small, Build::child}) {
        for (int lay = 0; lay < 3; ++lay) {
            for (const double n : knuckles) {
                for (int thumb = 0; thumb < 9; ++thumb) {
                    for (int rest = 0; rest < 4; ++rest) {
                        Wish w;
                        w.build = build;
                        w.seen.lay = static_cast<unit::Lay>(lay);
                        w.seen.knuckles = n;
                        w.seen.thumb_side = static_cast<unit::ThumbSide>(thumb % 3);
                        w.seen.thumb_length = static_cast<unit::ThumbLength>(thumb / 3);
                        w.seen.heel_pad = static_cast<unit::HeelPad>(rest / 2);
                        w.seen.gap = rest % 2 == 1;
                        w.join = static_cast<unit::Join>((thumb + rest) % 3);
                        w.glove = (lay + thumb) % 2;
                        f(w);
                    }
                }
            }
        }
    }
}

/// The first thing that is wrong with a pose and its facts; empty when nothing is.
std::string fault(const Pose& p, const Facts& f) {
    const Wish& w = p.wish();
    if (f.contradiction_key.find("knuckles") == std::string::npos &&
        f.knuckles != int(std::floor(*w.seen.knuckles)))
        return "another number of knuckles";
    if (!std::isfinite(f.v.value) || !std::isfinite(f.lay.value)) return "no angle";
    if (!(f.gap_mm >= 0 && f.held_share >= 0 && f.held_share <= 1)) return "no gap or share";
    for (const Contact& c : f.contacts) {
        for (const double d : {c.first, c.middle, c.end}) {
            if (!(d > -4 && std::isfinite(d))) return "a finger through the handle";
        }
    }
    const Limbs& l = p.lead();
    if (!(l.to_grip(l.thumb[3]).z > 0)) return "a thumb behind the handle";
    if (!(l.handle.clear(l.thumb[3], l.body.thumb_radius[3]) > -2)) return "a thumb in the handle";
    return {};
}

std::string told(const Wish& w) {
    return "build " + std::to_string(int(w.build)) + ", lay " + std::to_string(int(*w.seen.lay)) +
           ", knuckles " + std::to_string(*w.seen.knuckles) + ", thumb " +
           std::to_string(int(*w.seen.thumb_side)) + std::to_string(int(*w.seen.thumb_length)) +
           ", pad " + std::to_string(int(*w.seen.heel_pad)) + (*w.seen.gap ? ", gap" : "");
}

} // namespace

TEST_CASE("Recorded holds of every build give sound facts and drawings") {
    int holds = 0, drawings = 0, spurs = 0;
    each_wish({0, .5, 1, 1.5, 2, 2.5, 3, 3.5, 4}, [&](const Wish& w) {
        const Pose p(w);
        const std::string wrong = fault(p, facts(p));
        if (!wrong.empty()) FAIL_CHECK(wrong + ": " + told(w));
        if (holds++ % 8 != 0) return;
        const auto view = static_cast<View>(drawings++ % 9);
        for (const std::string& f : sound::faults(draw(p, view))) {
            const bool spur = f.rfind("a spur", 0) == 0;
            spurs += spur;
            if (!spur) FAIL_CHECK(f + ": view " + std::to_string(int(view)) + ", " + told(w));
        }
    });
    CHECK(holds == 2916);
    CHECK(drawings > 300);
    // Where flesh pinches to nothing an outline may end in a cusp. It has to stay rare.
    CHECK(spurs * 10 < drawings);
}
