// Long runs of paths go past Cairo: what poppler makes of them must be what Cairo itself draws.
#include "output/cairo_handle.hpp"
#include "output/pdf.hpp"
#include "output/png.hpp"
#include "tool.hpp"

#include <catch2/catch.hpp>

#include <cmath>
#include <cstdlib>
#include <numbers>

namespace {

constexpr ink::Size paper{240, 180};

/// A star of `points` spikes.
ink::Path star(ink::Point centre, double radius, int points) {
    std::vector<ink::Point> out;
    for (int i = 0; i < 2 * points; ++i) {
        const double turn = i * std::numbers::pi / points, r = i % 2 == 0 ? radius : radius / 2;
        out.push_back({centre.x + r * std::sin(turn), centre.y - r * std::cos(turn)});
    }
    return ink::Path::polyline(out, true);
}

/// Something below, a run of fills and strokes of every kind, something above; all under a clip.
std::vector<ink::Mark> scene() {
    const ink::Path wave = ink::Path().move({10, 150}).curve({80, 60}, {120, 240}, {230, 20.03});
    std::vector<ink::Mark> out;
    out.emplace_back(ink::Tag{true, "Figure", "A star"});
    out.emplace_back(ink::Clip{true, ink::Path::rect({20, 15, 190, 150})});
    out.emplace_back(ink::Fill{ink::Path::rect({0, 0, 120, 180}), ink::grey(0.8)});
    out.emplace_back(ink::Fill{star({110, 90}, 80, 40), {0.9, 0.3, 0.1}});
    out.emplace_back(ink::Stroke{star({110, 90}, 70, 5), 3, {0, 0, 0.7}, {}, ink::Cap::butt});
    out.emplace_back(ink::Stroke{wave, 4.2, ink::black, {9, 7}, ink::Cap::round});
    out.emplace_back(ink::Stroke{wave, 1, ink::white, {}, ink::Cap::butt});
    out.emplace_back(ink::Fill{star({60, 130}, 30, 3), ink::white});
    out.emplace_back(ink::Clip{false, {}});
    out.emplace_back(ink::Tag{false, "Figure", {}});
    out.emplace_back(ink::Fill{ink::Path::circle({110, 90}, 12), {0, 0.6, 0}});
    return out;
}

std::string pdf_of(const std::vector<ink::Mark>& marks) {
    page::Book book;
    book.sheets.push_back({paper, marks, "1", {}});
    return output::pdf(book);
}

output::Surface pixels(const std::string& path) {
    output::Surface out(cairo_image_surface_create_from_png(path.c_str()));
    REQUIRE(cairo_surface_status(out.get()) == CAIRO_STATUS_SUCCESS);
    return out;
}

/// Of 0 to 255 in each of three channels: the mean difference of two pictures.
double difference(cairo_surface_t* a, cairo_surface_t* b) {
    const int width = cairo_image_surface_get_width(a), height = cairo_image_surface_get_height(a);
    REQUIRE(width == cairo_image_surface_get_width(b));
    REQUIRE(height == cairo_image_surface_get_height(b));
    const auto* p = cairo_image_surface_get_data(a);
    const auto* q = cairo_image_surface_get_data(b);
    double sum = 0;
    for (int y = 0; y < height; ++y)
        for (int x = 0; x < width * 4; ++x)
            if (x % 4 < 3)
                sum += std::abs(int{p[y * cairo_image_surface_get_stride(a) + x]} -
                                int{q[y * cairo_image_surface_get_stride(b) + x]});
    return sum / (3.0 * width * height);
}

output::Surface by_poppler(const std::vector<ink::Mark>& marks) {
    const auto path = stored("form.pdf", pdf_of(marks));
    printed("pdftoppm -r 144 -png -singlefile " + path + " " + scratch("form"));
    return pixels(scratch("form.png"));
}

output::Surface by_cairo(const std::vector<ink::Mark>& marks) {
    return pixels(stored("form-cairo.png", output::png(marks, paper, 144)));
}

} // namespace

TEST_CASE("a run of paths written past Cairo looks as Cairo draws it") {
    const auto marks = scene();
    const auto ours = by_poppler(marks), theirs = by_cairo(marks);
    CHECK(difference(ours.get(), theirs.get()) < 1.2); // edges are smoothed differently
    for (std::size_t i : {2, 3, 4, 5, 6, 7, 10}) {     // each mark counts
        auto fewer = marks;
        fewer.erase(fewer.begin() + std::ptrdiff_t(i));
        INFO("without mark " << i);
        CHECK(difference(ours.get(), by_cairo(fewer).get()) > 1.2);
    }
}

TEST_CASE("what stands for such a run is a form in the element it belongs to") {
    const auto plain = printed("qpdf --qdf --object-streams=disable " +
                               stored("form-plain.pdf", pdf_of(scene())) + " -");
    const auto form = plain.find("/Subtype /Form");
    REQUIRE(form != plain.npos);
    CHECK(plain.find("/Subtype /Form", form + 1) == plain.npos);
    CHECK(plain.find("CCITTFaxDecode") == plain.npos);
    CHECK(plain.find("/Subtype /Image") == plain.npos);
    const auto shown = plain.find(" Do\n");
    REQUIRE(shown != plain.npos);
    const auto element = plain.rfind("BDC", shown);
    REQUIRE(element != plain.npos);
    CHECK_THAT(plain.substr(element - 30, 30), Catch::Matchers::Contains("/Figure"));
    CHECK(plain.find("EMC", element) > shown);
}

TEST_CASE("a short path needs no form") {
    CHECK(pdf_of({ink::Fill{star({90, 90}, 50, 5), ink::black}}).find("/Form") ==
          std::string::npos);
}
