// Contact sheets for looking at: test_hand "[.sheet]" writes SVG files into the build folder.
#include "hand/hand.hpp"
#include "svg.hpp"

#include <catch2/catch.hpp>

#include <chrono>
#include <fstream>
#include <iostream>

namespace {

using namespace hand;

Wish before() {
    Wish w;
    w.seen.lay = unit::Lay::palm;
    w.seen.knuckles = 1;
    w.seen.thumb_side = unit::ThumbSide::centre;
    w.seen.thumb_length = unit::ThumbLength::long_thumb;
    w.seen.gap = true;
    w.face_degrees = 8;
    return w;
}

Wish after() {
    Wish w;
    w.seen.lay = unit::Lay::fingers;
    w.seen.knuckles = 2.5;
    w.seen.gap = false;
    return w;
}

constexpr std::pair<const char*, View> views[]{
    {"open_palm", View::open_palm},       {"fingers_first", View::fingers_first},
    {"golfers_eye", View::golfers_eye},   {"butt_end", View::butt_end},
    {"balance", View::balance},           {"joined", View::joined},
    {"joined_front", View::joined_front}, {"thumb_short", View::thumb_short},
    {"thumb_long", View::thumb_long}};

void write(const std::string& name, const std::string& text) {
    std::ofstream(std::string(BUILD_DIR) + "/" + name) << text;
}

double milliseconds(std::chrono::steady_clock::time_point since) {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - since)
        .count();
}

void pair_sheet(const char* name, View view) {
    std::string groups;
    double height = 0, x = 1;
    for (const Wish& w : {before(), after()}) {
        const auto t0 = std::chrono::steady_clock::now();
        const auto p = pose(w);
        const double solved = milliseconds(t0);
        const auto t1 = std::chrono::steady_clock::now();
        const Picture picture = draw(*p, view);
        std::cout << name << " pose " << solved << " ms, view " << milliseconds(t1) << " ms, "
                  << look::path_bytes(picture) << " bytes\n";
        groups += look::group(picture, x, 1, {62, std::getenv("ANCHORS") != nullptr});
        x += 64;
        height = 62 * picture.height / picture.width;
    }
    write(std::string(name) + ".svg", look::page(groups, x, height + 2));
}

} // namespace

TEST_CASE("Every view is written as a before and after pair", "[.sheet]") {
    for (const auto& [name, view] : views)
        pair_sheet(name, view);
    for (const Wish& w : {before(), after()}) {
        const Facts f = facts(*pose(w));
        std::cout << f.knuckles << " knuckles, V " << f.v.value << ", lay " << f.lay.value
                  << ", gap " << f.gap_mm << ", share " << f.held_share << ", rests " << f.rests
                  << " " << f.contradiction_key << "\n";
        for (const Contact& c : f.contacts)
            std::cout << "  " << c.finger << " " << c.first << " " << c.middle << " " << c.end
                      << "\n";
    }
}

TEST_CASE("The strip is written", "[.sheet]") {
    std::string groups;
    double x = 1;
    for (const double n : {0., 1., 2., 3., 4.}) {
        groups += look::group(strip(n, Build::large, false), x, 1,
                              {40, std::getenv("ANCHORS") != nullptr});
        x += 41;
    }
    write("strip.svg", look::page(groups, x, 75));
}

TEST_CASE("Joins, gloves and builds are written", "[.sheet]") {
    std::string groups;
    double x = 1;
    for (const auto join : {unit::Join::overlap, unit::Join::interlock, unit::Join::ten_finger}) {
        Wish w = after();
        w.join = join;
        groups += look::group(draw(*pose(w), View::joined_front), x, 1, {50});
        groups += look::group(draw(*pose(w), View::joined), x, 82, {50});
        x += 51;
    }
    for (const View view : {View::golfers_eye, View::open_palm}) {
        Wish w = after();
        w.glove = true;
        groups += look::group(draw(*pose(w), view), x, 1, {40});
        w.glove = false;
        w.build = Build::child;
        groups += look::group(draw(*pose(w), view), x, 85, {40});
        x += 41;
    }
    write("joins.svg", look::page(groups, x, 165));
}
