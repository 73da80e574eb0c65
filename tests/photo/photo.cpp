#include "photo/photo.hpp"

#include "camera.hpp"

#include <catch2/catch.hpp>
#include <png.h>

namespace {

using Catch::Matchers::Contains;

std::string why_not(const std::string& bytes, const photo::Cut& cut = {}) {
    try {
        photo::photo_of(bytes, cut);
    } catch (const photo::Fault& fault) {
        CHECK(!fault.hint.empty());
        return fault.what;
    }
    return "printed";
}

std::string png_of(int width, int height) {
    png_image image{};
    image.version = PNG_IMAGE_VERSION;
    image.width = static_cast<png_uint_32>(width), image.height = static_cast<png_uint_32>(height);
    image.format = PNG_FORMAT_RGB;
    std::vector<png_byte> dots(static_cast<std::size_t>(width * height * 3));
    for (std::size_t i = 0; i < dots.size(); ++i)
        dots[i] = static_cast<png_byte>(i / 3 % static_cast<std::size_t>(width));
    png_alloc_size_t size = 0;
    png_image_write_get_memory_size(image, size, 0, dots.data(), 0, nullptr);
    std::string out(size, '\0');
    png_image_write_to_memory(&image, out.data(), &size, 0, dots.data(), 0, nullptr);
    out.resize(size);
    return out;
}

} // namespace

TEST_CASE("nothing that a camera wrote beside the picture is left") {
    for (int orientation = 1; orientation <= 8; ++orientation) {
        const std::string raw = camera::photograph(320, 240, orientation);
        REQUIRE(raw.find("NosyCamera7") != raw.npos);
        REQUIRE(raw.find("NosyTail") != raw.npos);
        for (const photo::Cut& cut : {photo::Cut{}, photo::Cut{0.1, 0.2, 0.1, 0}}) {
            const auto photo = photo::photo_of(raw, cut);
            CHECK(photo.bytes->find("Nosy") == std::string::npos);
            CHECK(photo.bytes->find("Exif") == std::string::npos);
            CHECK(photo.bytes->find("xmp") == std::string::npos);
        }
    }
}

TEST_CASE("a photograph stands upright, whichever way the camera was held") {
    // CIPA DC-008, tag 0x0112: where the stored row 0 and column 0 are to be seen
    struct Held {
        int orientation;
        bool swapped, red_grows_right, green_grows_down;
    };
    for (const Held held : {Held{1, false, true, true},
                            {2, false, false, true},
                            {3, false, false, false},
                            {4, false, true, false}}) {
        INFO("orientation " << held.orientation);
        const auto photo = photo::photo_of(camera::photograph(320, 240, held.orientation));
        CHECK(photo.width == 320);
        CHECK(photo.height == 240);
        const auto dots = camera::decoded(*photo.bytes);
        CHECK((dots.red(1, 0.5) > dots.red(0, 0.5)) == held.red_grows_right);
        CHECK((dots.green(0.5, 1) > dots.green(0.5, 0)) == held.green_grows_down);
    }
    // 5 to 8: rows become columns. Red grew along the stored row, green down the stored column.
    for (const Held held : {Held{5, true, true, true},
                            {6, true, false, true},
                            {7, true, false, false},
                            {8, true, true, false}}) {
        INFO("orientation " << held.orientation);
        const auto photo = photo::photo_of(camera::photograph(320, 240, held.orientation));
        CHECK(photo.width == 240);
        CHECK(photo.height == 320);
        const auto dots = camera::decoded(*photo.bytes);
        CHECK((dots.green(1, 0.5) > dots.green(0, 0.5)) == held.red_grows_right);
        CHECK((dots.red(0.5, 1) > dots.red(0.5, 0)) == held.green_grows_down);
    }
}

TEST_CASE("turning loses nothing: turned there and back, the dots are the same") {
    const std::string raw = camera::plain_jpeg(320, 240);
    const auto once = photo::photo_of(camera::photograph(320, 240, 6));
    const std::string tagged =
        once.bytes->substr(0, 2) + camera::segment(0xE1, camera::exif(8)) + once.bytes->substr(2);
    const auto back = photo::photo_of(tagged);
    CHECK(camera::decoded(*back.bytes).rgb == camera::decoded(raw).rgb);
}

TEST_CASE("sides that are no whole blocks are trimmed by less than a block") {
    const auto photo = photo::photo_of(camera::photograph(333, 251, 6));
    CHECK(photo.width <= 251);
    CHECK(photo.width > 251 - 16);
    CHECK(photo.height <= 333);
    CHECK(photo.height > 333 - 16);
}

TEST_CASE("what is cropped away leaves the file, up to the edge of a block") {
    const std::string raw = camera::photograph(640, 480, 1);
    const auto photo = photo::photo_of(raw, {0.25, 0.5, 0.25, 0});
    CHECK(photo.width <= 320 + 15);
    CHECK(photo.height <= 240 + 15);
    CHECK(photo.shown.width == Approx(320));
    CHECK(photo.shown.height == Approx(240));
    const auto dots = camera::decoded(*photo.bytes);
    CHECK(dots.red(0, 0.5) == Approx(0.25 * 255).margin(8)); // begins a quarter from the left
    CHECK(dots.green(0.5, 0) == Approx(0.5 * 255).margin(8));
}

TEST_CASE("PNG is cropped and packed anew") {
    const auto photo = photo::photo_of(png_of(200, 100), {0.1, 0, 0.4, 0.5});
    CHECK(photo.format == "png");
    CHECK(photo.width == 100);
    CHECK(photo.height == 50);
}

TEST_CASE("small pictures are printed small") {
    const auto photo = photo::photo_of(camera::plain_jpeg(160, 160));
    CHECK(photo::widest(photo) == Approx(160.0 / 100 * 72));
}

TEST_CASE("what cannot be printed says why") {
    const std::string good = camera::plain_jpeg(320, 240);
    CHECK(why_not(good) == "printed");
    CHECK_THAT(why_not(good.substr(0, good.size() / 2)), Contains("cut short"));
    CHECK_THAT(why_not(good.substr(0, 40)), Contains("broken"));
    CHECK_THAT(why_not(""), Contains("empty"));
    CHECK_THAT(why_not("a letter"), Contains("neither JPEG nor PNG"));
    CHECK_THAT(why_not("1234ftypheic and more"), Contains("telephone"));
    const std::string png = png_of(100, 100);
    CHECK_THAT(why_not(png.substr(0, png.size() - 30)), Contains("cut short"));
    CHECK_THAT(why_not("<svg xmlns=\"http://www.w3.org/2000/svg\"><text>A</text></svg>"),
               Contains("font"));
}

TEST_CASE("a picture of 40,000 dots a side is refused by its head, unread") {
    std::string jpeg = camera::plain_jpeg(64, 64);
    const auto frame = jpeg.find("\xFF\xC0");
    REQUIRE(frame != jpeg.npos);
    jpeg[frame + 5] = '\x9C', jpeg[frame + 6] = '\x40'; // height 40,000
    jpeg[frame + 7] = '\x9C', jpeg[frame + 8] = '\x40'; // width 40,000
    CHECK_THAT(why_not(jpeg), Contains("40000 by 40000 dots"));
}

TEST_CASE("no broken photograph stops the program") {
    const std::string good = camera::photograph(160, 120, 6);
    std::uint32_t random = 7;
    int refused = 0;
    for (int i = 0; i < 3000; ++i) {
        std::string bad = good;
        for (int k = 0; k < 3; ++k) {
            random = random * 1664525u + 1013904223u; // Knuth, a plain congruence
            bad[random % 700 % bad.size()] = static_cast<char>(random >> 24);
        }
        if (why_not(bad) != "printed") ++refused;
    }
    CHECK(refused > 100);
}
