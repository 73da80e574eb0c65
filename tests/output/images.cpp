#include "output/cairo_handle.hpp"
#include "output/png.hpp"
#include "output/svg.hpp"
#include "output/trace.hpp"

#include "sample.hpp"
#include "text/pango_typesetter.hpp"
#include "tool.hpp"

#include <catch2/catch.hpp>

namespace {

using Catch::Matchers::Contains;
using Catch::Matchers::StartsWith;

ink::Drawing drawing(const text::Typesetter& setter) {
    ink::Drawing out;
    out.size = {100, 50};
    out.message = "Open < square";
    out.marks.emplace_back(ink::Fill{ink::Path::rect({10, 10, 30, 20}), ink::grey(0.5)});
    out.add(
        ink::Stroke{ink::Path::segment({0, 0}, {100, 50}), 1, ink::black, {2, 1}, ink::Cap::butt});
    out.marks.emplace_back(setter.line("after", {}, {20, 40}));
    return out;
}

/// Big-endian width and height of the IHDR chunk (W3C PNG specification, 11.2.2).
std::pair<int, int> png_size(const std::string& png) {
    const auto number = [&](std::size_t at) {
        int out = 0;
        for (std::size_t i = 0; i < 4; ++i)
            out = out << 8 | static_cast<unsigned char>(png[at + i]);
        return out;
    };
    return {number(16), number(20)};
}

} // namespace

TEST_CASE("a PNG has the pixels that size and resolution ask for") {
    const text::PangoTypesetter setter;
    const auto d = drawing(setter);
    CHECK(png_size(output::png(d.marks, d.size, 144)) == std::pair{200, 100});
    CHECK(png_size(output::png(d.marks, d.size, 100)) == std::pair{139, 70});
    CHECK(output::png(d.marks, d.size, 144) == output::png(d.marks, d.size, 144));
}

TEST_CASE("an SVG says its message and is the same the second time") {
    const text::PangoTypesetter setter;
    const auto d = drawing(setter);
    const auto svg = output::svg(d);
    CHECK_THAT(svg, Contains("<title>Open &lt; square</title>") && Contains("role=\"img\""));
    CHECK(svg == output::svg(d));
}

TEST_CASE("a trace tells kinds, places and texts") {
    const text::EvenTypesetter toy;
    CHECK(output::trace(drawing(toy).marks) ==
          "  fill 10.0 10.0  30.0 x 20.0  m 10.0 10.0  l 40.0 10.0  l 40.0 30.0  l 10.0 30.0  z  "
          "#808080\n"
          "  stroke 0.0 0.0  100.0 x 50.0  m 0.0 0.0  l 100.0 50.0  1.00 #000000  dash 2.0 1.0  "
          "butt\n"
          "  words 20.0 40.0  27.5  Lato 11.0 400 #000000  \"after\"\n");
    const auto book = output::trace(sample_book(toy, {612, 792}));
    CHECK_THAT(book,
               StartsWith("book \"Lesson of Mel & Ana\" by \"Coach Example\"  en-GB  2026-05-14\n"
                          "page \"1\"  612.0 x 792.0\n  <H1>\n    words 50.0 "));
    CHECK_THAT(book, Contains("<Figure> \"The face was open in 9 of 10 shots.\"") &&
                         Contains("turn 90.0") &&
                         Contains("link 50.0 300.0  100.0 x 14.0  \"#drill-1\"") &&
                         Contains("bookmark 2  sheet 2  50.0 220.0  \"Table\""));
}
