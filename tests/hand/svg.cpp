#include "svg.hpp"

#include "hand/curve.hpp"

#include <cmath>
#include <cstdio>

namespace look {
namespace {

using namespace hand;

std::string number(double v) {
    char text[32];
    std::snprintf(text, sizeof text, "%.3f", v);
    return text;
}

/// Operator letter and coordinates of one path step.
void step(std::string& d, char letter, Dot p) {
    d += letter;
    d += number(p.x);
    d += ' ';
    d += number(p.y);
}

std::string path(const Outline& o) {
    std::string d;
    step(d, 'M', o.start);
    for (const Cubic& c : o.pieces) {
        step(d, 'C', c.a);
        step(d, ' ', c.b);
        step(d, ' ', c.to);
    }
    if (o.closed) d += 'Z';
    return d;
}

double points(Pen pen) {
    switch (pen) {
    case Pen::outline:
        return .9;
    case Pen::inner:
    case Pen::knuckle:
        return .7;
    case Pen::detail:
        return .5;
    case Pen::handle:
        return 1.1;
    case Pen::hatch:
        return .35;
    case Pen::accent:
        return .7;
    }
    return 0;
}

const char* ink(Tone tone) {
    switch (tone) {
    case Tone::skin:
        return "#fff";
    case Tone::shade:
        return "#e6e6e6";
    case Tone::handle:
        return "#a6a6a6";
    case Tone::handle_shade:
        return "#737373";
    case Tone::handle_light:
        return "#d9d9d9";
    case Tone::glove:
        return "#f0f0f0";
    case Tone::club:
        return "#fff";
    case Tone::accent:
        return "#b22";
    case Tone::mark:
        return "#111";
    }
    return "";
}

/// A line whose free ends run out to nothing over 12 mm is drawn as a filled shape.
std::string tapered(const Line& line, double width) {
    const Polyline p = resampled(flattened(line.path), .4);
    const auto s = arc_length(p);
    const double whole = s.back(), run = std::min(12.0, whole * .45);
    std::string left;
    Polyline back;
    for (std::size_t i = 0; i < p.size(); ++i) {
        const Dot d = unit_vector(p[std::min(i + 1, p.size() - 1)] - p[i ? i - 1 : 0]);
        double k = 1;
        if (line.taper_start && s[i] < run) k = std::min(k, .12 + .88 * std::sqrt(s[i] / run));
        if (line.taper_end && whole - s[i] < run)
            k = std::min(k, .12 + .88 * std::sqrt((whole - s[i]) / run));
        const Dot n = Dot{-d.y, d.x} * (width / 2 * k);
        const Dot a = p[i] + n, b = p[i] - n;
        step(left, i ? 'L' : 'M', a);
        back.push_back(b);
    }
    for (std::size_t i = back.size(); i-- > 0;) {
        step(left, 'L', back[i]);
    }
    return "<path d=\"" + left + "Z\" fill=\"#111\"/>\n";
}

std::string mark(const Line& line, double scale) {
    const double w = points(line.pen) * 25.4 / 72 / scale;
    if (line.taper_start || line.taper_end) return tapered(line, w);
    return "<path d=\"" + path(line.path) +
           "\" fill=\"none\" stroke=\"#111\" stroke-linecap=\"round\" stroke-linejoin=\"round\" "
           "stroke-width=\"" +
           number(w) + "\"/>\n";
}

std::string mark(const Area& area, double) {
    std::string d;
    for (const Outline& o : area.loops)
        d += path(o);
    return "<path d=\"" + d + "\" fill=\"" + ink(area.tone) + "\"/>\n";
}

} // namespace

std::string group(const Picture& picture, double x, double y, const Inks& inks) {
    const double scale = inks.print_width / picture.width;
    std::string out = "<svg x=\"" + number(x) + "\" y=\"" + number(y) + "\" width=\"" +
                      number(inks.print_width) + "\" height=\"" + number(picture.height * scale) +
                      "\" viewBox=\"0 0 " + number(picture.width) + " " + number(picture.height) +
                      "\">\n";
    for (const auto& m : picture.marks) {
        out += std::visit([&](const auto& v) { return mark(v, scale); }, m);
    }
    if (inks.anchors) {
        for (const Anchor& a : picture.anchors) {
            out += "<circle cx=\"" + number(a.at.x) + "\" cy=\"" + number(a.at.y) +
                   "\" r=\"1.5\" fill=\"#d00\"/><text x=\"" + number(a.at.x + 2) + "\" y=\"" +
                   number(a.at.y) + "\" font-size=\"5\" fill=\"#d00\">" + a.name + "</text>\n";
        }
    }
    return out + "</svg>\n";
}

std::string page(const std::string& groups, double width, double height) {
    return "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + number(width) + "mm\" height=\"" +
           number(height) + "mm\" viewBox=\"0 0 " + number(width) + " " + number(height) +
           "\">\n<rect width=\"" + number(width) + "\" height=\"" + number(height) +
           "\" fill=\"#fff\"/>\n" + groups + "</svg>\n";
}

std::size_t path_bytes(const Picture& picture) {
    std::size_t n = 0;
    const auto count = [&](const Outline& o) {
        char text[128];
        n += std::size_t(std::snprintf(text, sizeof text, "%.2f %.2f m\n", o.start.x, o.start.y));
        for (const Cubic& c : o.pieces) {
            n += std::size_t(std::snprintf(text, sizeof text, "%.2f %.2f %.2f %.2f %.2f %.2f c\n",
                                           c.a.x, c.a.y, c.b.x, c.b.y, c.to.x, c.to.y));
        }
    };
    for (const auto& m : picture.marks) {
        if (const Area* area = std::get_if<Area>(&m)) {
            for (const Outline& o : area->loops)
                count(o);
        } else {
            count(std::get<Line>(m).path);
        }
    }
    return n;
}

} // namespace look
