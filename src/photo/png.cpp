#include "photo/formats.hpp"

#include <png.h>

#include <vector>

namespace photo {

namespace {

/// libpng's simplified interface, freed when it goes.
struct Image {
    png_image png{};
    Image() { png.version = PNG_IMAGE_VERSION; }
    ~Image() { png_image_free(&png); }
    Image(const Image&) = delete;
    Image& operator=(const Image&) = delete;
};

const Fault broken{"is broken or cut short", "copy it again from where it comes"};

} // namespace

Photo png_photo(std::string_view bytes, const Cut& cut) {
    Image image;
    if (png_image_begin_read_from_memory(&image.png, bytes.data(), bytes.size()) == 0) throw broken;
    const int width = static_cast<int>(image.png.width);
    const int height = static_cast<int>(image.png.height);
    expect_size(width, height, largest_png);
    const bool see_through = (image.png.format & PNG_FORMAT_FLAG_ALPHA) != 0;
    image.png.format = see_through ? PNG_FORMAT_RGBA : PNG_FORMAT_RGB;
    const std::size_t dot = see_through ? 4 : 3;
    std::vector<png_byte> dots(PNG_IMAGE_SIZE(image.png));
    if (png_image_finish_read(&image.png, nullptr, dots.data(), 0, nullptr) == 0 ||
        image.png.warning_or_error != 0)
        throw broken;

    const ink::Rect shown = shown_part(width, height, cut);
    const auto x = static_cast<std::size_t>(shown.x), y = static_cast<std::size_t>(shown.y);
    Image out;
    out.png.width = static_cast<png_uint_32>(std::max(1.0, shown.width));
    out.png.height = static_cast<png_uint_32>(std::max(1.0, shown.height));
    out.png.format = see_through ? PNG_FORMAT_RGBA : PNG_FORMAT_RGB;
    const std::size_t stride = static_cast<std::size_t>(width) * dot;
    const png_byte* first = dots.data() + y * stride + x * dot;
    png_alloc_size_t size = 0;
    const auto row = static_cast<png_int_32>(stride);
    if (png_image_write_get_memory_size(out.png, size, 0, first, row, nullptr) == 0) throw broken;
    std::string packed(size, '\0');
    if (png_image_write_to_memory(&out.png, packed.data(), &size, 0, first, row, nullptr) == 0)
        throw broken;
    packed.resize(size);
    const int w = static_cast<int>(out.png.width), h = static_cast<int>(out.png.height);
    return {"png",
            std::make_shared<const std::string>(std::move(packed)),
            w,
            h,
            {0, 0, static_cast<double>(w), static_cast<double>(h)}};
}

} // namespace photo
