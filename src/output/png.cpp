#include "output/png.hpp"

#include "output/cairo_painter.hpp"

#include <algorithm>
#include <cmath>

namespace output {

std::string png(const std::vector<ink::Mark>& marks, ink::Size size, double dots_per_inch) {
    const double scale = std::clamp(dots_per_inch, 1.0, 1200.0) / 72;
    const auto pixels = [&](double points) {
        return std::max(1, static_cast<int>(std::ceil(points * scale - 1e-6)));
    };
    const Surface surface(
        cairo_image_surface_create(CAIRO_FORMAT_RGB24, pixels(size.width), pixels(size.height)));
    expect(cairo_surface_status(surface.get()), "making room for a PNG picture");
    const Context context(cairo_create(surface.get()));
    cairo_set_source_rgb(context.get(), 1, 1, 1);
    cairo_paint(context.get());
    cairo_scale(context.get(), scale, scale);
    Pictures pictures;
    CairoPainter(context.get(), CairoPainter::Target::image, pictures).paint(marks);
    std::string bytes;
    expect(cairo_surface_write_to_png_stream(surface.get(), append, &bytes),
           "writing a PNG picture");
    return bytes;
}

} // namespace output
