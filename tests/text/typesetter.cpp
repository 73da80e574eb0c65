#include "text/pango_typesetter.hpp"
#include "text/shaped.hpp"

#include <catch2/catch.hpp>

namespace {

const ink::Style body{.family = "Lato", .size = 10};

} // namespace

TEST_CASE("a width scales with the size: no hinting, no rounding") {
    const text::PangoTypesetter setter;
    auto large = body;
    large.size = 100;
    const auto small_width = setter.line("Where the ball starts", body).width;
    const auto large_width = setter.line("Where the ball starts", large).width;
    CHECK(small_width * 10 == Approx(large_width).epsilon(0.001));
}

TEST_CASE("all names are set or reported missing") {
    const text::PangoTypesetter setter;
    for (const char* name : {"Μαρία", "Ольга", "Łukasz", "Željko", "مريم", "מרים"}) {
        INFO(name);
        CHECK(setter.missing(name, body).empty());
        CHECK(setter.line(name, body).width > 10);
    }
}
