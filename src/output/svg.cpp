#include "output/svg.hpp"

#include "output/cairo_painter.hpp"
#include "output/xmp.hpp"

#include <cairo-svg.h>

namespace output {

std::string svg(const ink::Drawing& drawing) {
    std::string bytes;
    const Surface surface(cairo_svg_surface_create_for_stream(append, &bytes, drawing.size.width,
                                                              drawing.size.height));
    const Context context(cairo_create(surface.get()));
    Pictures pictures;
    CairoPainter(context.get(), CairoPainter::Target::image, pictures).paint(drawing.marks);
    cairo_surface_finish(surface.get());
    expect(cairo_surface_status(surface.get()), "writing an SVG picture");
    const auto start = bytes.find("<svg");
    const auto head = start == bytes.npos ? start : bytes.find('>', start);
    if (head != bytes.npos && !drawing.message.empty()) {
        bytes.insert(head + 1, "\n<title>" + xml_escaped(drawing.message) + "</title>");
        bytes.insert(start + 4, " role=\"img\"");
    }
    return bytes;
}

} // namespace output
