#include "output/ink_cover.hpp"

#include "output/cairo_painter.hpp"

#include <cmath>
#include <cstddef>
#include <cstring>

namespace output {

double ink_cover(const page::Sheet& sheet) {
    constexpr double scale = 60.0 / 72;
    const int width = static_cast<int>(std::ceil(sheet.size.width * scale));
    const int height = static_cast<int>(std::ceil(sheet.size.height * scale));
    const Surface surface(cairo_image_surface_create(CAIRO_FORMAT_RGB24, width, height));
    expect(cairo_surface_status(surface.get()), "making room for a page");
    const Context context(cairo_create(surface.get()));
    cairo_set_source_rgb(context.get(), 1, 1, 1);
    cairo_paint(context.get());
    cairo_scale(context.get(), scale, scale);
    Pictures pictures;
    CairoPainter(context.get(), CairoPainter::Target::image, pictures).paint(sheet.marks);
    cairo_surface_flush(surface.get());
    const unsigned char* row = cairo_image_surface_get_data(surface.get());
    double sum = 0;
    for (int y = 0; y < height; ++y, row += cairo_image_surface_get_stride(surface.get()))
        for (int x = 0; x < width; ++x) {
            std::uint32_t dot = 0;
            std::memcpy(&dot, row + std::ptrdiff_t{x} * 4, 4);
            sum += 1 -
                   (0.2126 * (dot >> 16 & 255) + 0.7152 * (dot >> 8 & 255) + 0.0722 * (dot & 255)) /
                       255;
        }
    return sum / (static_cast<double>(width) * height);
}

} // namespace output
