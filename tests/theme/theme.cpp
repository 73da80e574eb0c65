#include "theme/theme.hpp"
#include "theme/colour.hpp"

#include <catch2/catch.hpp>

namespace {

constexpr double mm = 72.0 / 25.4;

using theme::contrast;

} // namespace

TEST_CASE("the contrast formula gives the published WCAG values") {
    CHECK(contrast(ink::black, ink::white) == Approx(21.0));
    CHECK(contrast({0x76 / 255.0, 0x76 / 255.0, 0x76 / 255.0}, ink::white) ==
          Approx(4.5422).margin(1e-4));
    CHECK(contrast({1, 0, 0}, ink::white) == Approx(3.9985).margin(1e-4));
    CHECK(contrast({0, 0, 1}, ink::white) == Approx(8.5925).margin(1e-4));
    CHECK(contrast({0x33 / 255.0, 0x33 / 255.0, 0x33 / 255.0}, ink::white) ==
          Approx(12.6347).margin(1e-4));
}

TEST_CASE("every ink for text reaches AAA on white, every ink for lines reaches 3 to 1") {
    const auto t = theme::house_style(theme::Paper::a4, false);
    for (const auto& setting : t.texts)
        CHECK(contrast(setting.style.colour, ink::white) >= 7.0);
    CHECK(contrast(t.text, ink::white) >= 7.0);
    CHECK(contrast(t.quiet, ink::white) >= 7.0);
    CHECK(contrast(t.rule, ink::white) >= 3.0);
    CHECK(contrast(t.accent, ink::white) >= 4.5);
}

TEST_CASE("papers have the sizes of ISO 216 and of US Letter") {
    CHECK(theme::size_of(theme::Paper::a4).width == Approx(595.2756).margin(1e-4));
    CHECK(theme::size_of(theme::Paper::a4).height == Approx(841.8898).margin(1e-4));
    CHECK(theme::size_of(theme::Paper::a5).width == Approx(419.5276).margin(1e-4));
    CHECK(theme::size_of(theme::Paper::a5).height == Approx(595.2756).margin(1e-4));
    CHECK(theme::size_of(theme::Paper::letter) == ink::Size{612, 792});
}

TEST_CASE(
    "content keeps clear of the holes of ISO 838 and of US three-hole punching, on both sides") {
    for (const auto paper : {theme::Paper::a4, theme::Paper::letter, theme::Paper::a5}) {
        const auto t = theme::house_style(paper, false);
        const double width = t.page().width;
        // ISO 838: centres 12 mm (tolerance 1) from the edge, 6 mm wide (tolerance 0.5); US: about
        // half an inch and 5/16 inch, from memory
        const double reach = std::max((12 + 1 + 3.25) * mm, 36.0 + 11.25);
        CHECK(t.live(true).x > reach);
        CHECK(width - t.live(false).right() > reach);
        CHECK(t.live(true).x == Approx(width - t.live(false).right())); // mirrored
        CHECK(t.live(true).width == Approx(t.live(false).width));
    }
}

TEST_CASE("no text is smaller than the smallest, and large print sets running text in 17 point") {
    for (const bool large : {false, true}) {
        const auto t = theme::house_style(theme::Paper::a4, large);
        for (const auto& setting : t.texts) {
            CHECK(setting.style.size >= t.smallest);
            CHECK(setting.leading >= setting.style.size);
        }
    }
    CHECK(theme::house_style(theme::Paper::a4, true).setting(theme::Text::body).style.size ==
          Approx(17));
}
