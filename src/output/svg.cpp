#include "output/svg.hpp"

#include "output/cairo_painter.hpp"
#include "output/xmp.hpp"

#include <cairo-svg.h>

#include <map>
#include <string_view>

namespace output {

namespace {

bool digit(char c) { return c >= '0' && c <= '9'; }

/// Cairo numbers surfaces and images over the whole process; here they count from 1 in the drawing.
std::string renumbered(std::string_view svg) {
    std::map<std::string, std::string, std::less<>> names;
    std::string out;
    for (std::size_t at = 0; at < svg.size();) {
        const auto rest = svg.substr(at);
        const std::size_t stem = rest.starts_with("surface") ? 7
                                 : rest.starts_with("image") ? 5
                                                             : 0;
        std::size_t end = stem;
        while (stem != 0 && end < rest.size() && digit(rest[end]))
            ++end;
        if (end == stem) {
            out += svg[at++];
            continue;
        }
        auto& name = names[std::string(rest.substr(0, end))];
        if (name.empty()) name = "part" + std::to_string(names.size());
        out += name;
        at += end;
    }
    return out;
}

} // namespace

std::string svg(const ink::Drawing& drawing) {
    std::string bytes;
    const Surface surface(cairo_svg_surface_create_for_stream(append, &bytes, drawing.size.width,
                                                              drawing.size.height));
    const Context context(cairo_create(surface.get()));
    Pictures pictures;
    CairoPainter(context.get(), CairoPainter::Target::image, pictures).paint(drawing.marks);
    cairo_surface_finish(surface.get());
    expect(cairo_surface_status(surface.get()), "writing an SVG picture");
    bytes = renumbered(bytes);
    const auto start = bytes.find("<svg");
    const auto head = start == bytes.npos ? start : bytes.find('>', start);
    if (head != bytes.npos && !drawing.message.empty()) {
        bytes.insert(head + 1, "\n<title>" + xml_escaped(drawing.message) + "</title>");
        bytes.insert(start + 4, " role=\"img\"");
    }
    return bytes;
}

} // namespace output
