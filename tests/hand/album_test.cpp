#include "hand/album.hpp"
#include "hand/album_bytes.hpp"

#include <catch2/catch.hpp>

#include <atomic>
#include <set>
#include <thread>

using namespace hand;

namespace {

constexpr View all_views[]{View::open_palm,    View::fingers_first, View::golfers_eye,
                           View::butt_end,     View::balance,       View::joined,
                           View::joined_front, View::thumb_short,   View::thumb_long};

Wish recorded() {
    Wish w;
    w.seen.lay = unit::Lay::palm;
    w.seen.knuckles = 1;
    w.seen.v = unit::VPoint::trail_shoulder;
    w.seen.gap = true;
    w.face_degrees = 7.25;
    return w;
}

/// A store in memory that counts.
struct Drawer {
    std::mutex mutex;
    std::map<std::string, std::string> kept;
    std::atomic<int> found = 0;

    Album::Store store() {
        return {[this](const std::string& key) -> std::optional<std::string> {
                    const std::lock_guard lock(mutex);
                    const auto at = kept.find(key);
                    if (at == kept.end()) return std::nullopt;
                    ++found;
                    return at->second;
                },
                [this](const std::string& key, const std::string& bytes) {
                    const std::lock_guard lock(mutex);
                    kept[key] = bytes;
                }};
    }
};

} // namespace

TEST_CASE("What an album gives is what facts and draw give, to the bit") {
    const auto p = pose(recorded());
    Album album;
    for (const View view : all_views)
        CHECK(album.picture(recorded(), view) == draw(*p, view));
    CHECK(bytes_of(album.facts(recorded())) == bytes_of(facts(*p)));
}

TEST_CASE("Pictures and facts come back from their bytes unchanged") {
    const auto p = pose(recorded());
    for (const View view : all_views) {
        const Picture drawn = draw(*p, view);
        Picture back;
        REQUIRE(read_bytes(bytes_of(drawn), back));
        CHECK(back == drawn);
    }
    Facts back;
    const Facts told = facts(*p);
    REQUIRE(read_bytes(bytes_of(told), back));
    CHECK(back.contradiction_key == told.contradiction_key);
    CHECK(back.gap_mm == told.gap_mm);
    REQUIRE(back.contacts.size() == 4);
    CHECK(back.contacts[3].finger == std::string("little"));
    CHECK(bytes_of(back) == bytes_of(told));
}

TEST_CASE("Bytes that are cut or spoilt are never taken for a picture of another size") {
    const std::string whole = bytes_of(draw(*pose(recorded()), View::butt_end));
    Picture p;
    for (std::size_t n = 0; n < whole.size(); n += 1 + n / 50)
        CHECK_FALSE(read_bytes(std::string_view(whole).substr(0, n), p));
    CHECK_FALSE(read_bytes(whole + "x", p));
    for (std::size_t i = 0; i < whole.size(); i += 1 + i / 50) { // reads or refuses, never breaks
        std::string spoilt = whole;
        spoilt[i] = char(spoilt[i] ^ 0xff);
        read_bytes(spoilt, p);
    }
    Facts f;
    const std::string told = bytes_of(facts(*pose(recorded())));
    for (std::size_t n = 0; n < told.size(); ++n)
        CHECK_FALSE(read_bytes(std::string_view(told).substr(0, n), f));
}

TEST_CASE("A later run takes its pictures from the store and draws what is spoilt anew") {
    Drawer drawer;
    const Picture first = Album(drawer.store()).picture(recorded(), View::golfers_eye);
    REQUIRE(drawer.kept.size() == 1);
    CHECK(Album(drawer.store()).picture(recorded(), View::golfers_eye) == first);
    CHECK(drawer.found == 1);
    const std::string whole = drawer.kept.begin()->second;
    drawer.kept.begin()->second.resize(100);
    CHECK(Album(drawer.store()).picture(recorded(), View::golfers_eye) == first);
    CHECK(drawer.kept.begin()->second == whole);
}

TEST_CASE("Every value of a wish has its own key") {
    std::set<std::string> keys;
    const auto add = [&](auto&& change) {
        Wish w;
        change(w);
        keys.insert(key_of(w, View::golfers_eye));
    };
    add([](Wish&) {});
    for (const bool target : {false, true}) {
        const auto grip = [&](auto&& change) {
            add([&](Wish& w) { change(target ? w.target : w.seen); });
        };
        grip([](unit::Grip& g) { g.lay = unit::Lay::fingers; });
        grip([](unit::Grip& g) { g.knuckles = 2.5; });
        grip([](unit::Grip& g) { g.v = unit::VPoint::chin; });
        grip([](unit::Grip& g) { g.thumb_side = unit::ThumbSide::centre; });
        grip([](unit::Grip& g) { g.thumb_length = unit::ThumbLength::middle; });
        grip([](unit::Grip& g) { g.heel_pad = unit::HeelPad::beside; });
        grip([](unit::Grip& g) { g.gap = true; });
        grip([](unit::Grip& g) { g.balance = unit::Balance::falls; });
        grip([](unit::Grip& g) { g.join = unit::Join::interlock; });
        grip([](unit::Grip& g) { g.square = true; });
        grip([](unit::Grip& g) { g.fingers_first = true; });
    }
    add([](Wish& w) { w.build = Build::child; });
    add([](Wish& w) { w.glove = true; });
    add([](Wish& w) { w.join = unit::Join::ten_finger; });
    add([](Wish& w) { w.face_degrees = 1e-9; });
    CHECK(keys.size() == 27);
    CHECK(key_of(Wish{}, View::butt_end) != key_of(Wish{}, View::balance));
    CHECK(key_of(Wish{}).find(edition) != std::string::npos);
}

TEST_CASE("The face of the club changes just the views that are said to show it") {
    Wish square, open;
    open.face_degrees = 15;
    const auto a = pose(square), b = pose(open);
    for (const View view : all_views)
        CHECK((draw(*a, view) == draw(*b, view)) != shows_face(view));
}

TEST_CASE("Threads that want the same picture wait for one drawing") {
    Drawer drawer;
    Album album(drawer.store());
    std::vector<std::thread> threads;
    std::vector<Picture> drawn(4);
    for (Picture& p : drawn)
        threads.emplace_back([&] { p = album.picture(recorded(), View::butt_end); });
    for (std::thread& t : threads)
        t.join();
    for (const Picture& p : drawn)
        CHECK(p == drawn[0]);
    CHECK(drawer.kept.size() == 1);
}

TEST_CASE("What was asked for lately stays; what was not for longest goes first") {
    Drawer drawer;
    Album album(drawer.store());
    const auto turned = [](double knuckles) {
        Wish w = recorded();
        w.seen.knuckles = knuckles;
        return w;
    };
    const auto others = [&](double from) {
        for (std::size_t i = 1; i < Album::most_kept; ++i)
            album.facts(turned(from + double(i) * .001));
    };
    album.facts(turned(1));
    others(1);
    album.facts(turned(1)); // still here, and now the freshest
    others(2);
    CHECK(drawer.found == 0);
    album.facts(turned(1));
    CHECK(drawer.found == 0);
    others(3);
    album.facts(turned(4));
    album.facts(turned(1)); // had to go: it comes from the store
    CHECK(drawer.found == 1);
}
