#include "output/trace.hpp"

#include "output/number.hpp"

#include <cmath>

namespace output {

namespace {

std::string tenth(double value) { return fixed(value, 1); }
std::string point(ink::Point p) { return tenth(p.x) + " " + tenth(p.y); }
std::string box(ink::Rect r) {
    return point({r.x, r.y}) + "  " + tenth(r.width) + " x " + tenth(r.height);
}

std::string colour(const ink::Colour& c) {
    static constexpr const char* digits = "0123456789abcdef";
    std::string out = "#";
    for (const double part : {c.red, c.green, c.blue}) {
        const auto byte =
            static_cast<std::size_t>(std::lround(std::min(1.0, std::max(0.0, part)) * 255));
        out += digits[byte / 16];
        out += digits[byte % 16];
    }
    return out;
}

std::string quoted(const std::string& text) {
    std::string out = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') out += '\\';
        c == '\n' ? out += "\\n" : out += c;
    }
    return out + "\"";
}

/// Verbs and end points, enough to see a change of shape.
std::string shape(const ink::Path& path) {
    std::string out = box(path.bounds());
    if (path.segments().size() > 8)
        return out + "  " + std::to_string(path.segments().size()) + " pieces";
    for (const auto& s : path.segments())
        switch (s.verb) {
        case ink::Segment::Verb::move:
            out += std::string("  m ") + point(s.to);
            break;
        case ink::Segment::Verb::line:
            out += std::string("  l ") + point(s.to);
            break;
        case ink::Segment::Verb::curve:
            out += std::string("  c ") + point(s.to);
            break;
        case ink::Segment::Verb::close:
            out += "  z";
            break;
        }
    return out;
}

std::string face(const ink::Style& s) {
    std::string out = s.family + " " + tenth(s.size) + " " + std::to_string(s.weight);
    if (s.italic) out += " italic";
    if (s.tabular) out += " tabular";
    if (s.tracking != 0) out += std::string(" tracking ") + tenth(s.tracking);
    return out;
}

struct Tracer {
    std::string out;
    std::size_t depth = 0;

    void put(const std::string& text) { out += std::string(2 * (depth + 1), ' ') + text + "\n"; }

    void operator()(const ink::Fill& m) {
        put(std::string("fill ") + shape(m.path) + "  " + colour(m.colour));
    }
    void operator()(const ink::Stroke& m) {
        std::string text = std::string("stroke ") + shape(m.path) + "  " + fixed(m.width, 2) + " " +
                           colour(m.colour);
        for (std::size_t i = 0; i < m.dash.size(); ++i)
            text += (i == 0 ? "  dash " : " ") + tenth(m.dash[i]);
        put(m.cap == ink::Cap::butt ? text + "  butt" : text);
    }
    void operator()(const ink::Words& m) {
        std::string text = std::string("words ") + point(m.at) + "  " + tenth(m.width) + "  " +
                           face(m.style) + " " + colour(m.style.colour) + "  " + quoted(m.text);
        put(m.turn == 0 ? text : text + "  turn " + tenth(m.turn));
    }
    void operator()(const ink::Picture& m) {
        put(std::string("picture ") + box(m.box) + "  " + m.format + " " +
            std::to_string(m.bytes ? m.bytes->size() : 0) + " bytes");
    }
    void operator()(const ink::Link& m) {
        put(std::string("link ") + box(m.box) + "  " + quoted(m.target));
    }
    void operator()(const ink::Place& m) {
        put(std::string("place ") + point(m.at) + "  " + quoted(m.name));
    }
    void operator()(const ink::Clip& m) {
        put(m.opens ? std::string("clip ") + shape(m.path) : "unclip");
    }
    void operator()(const ink::Tag& m) {
        if (!m.opens && depth > 0) --depth;
        if (!m.opens) return;
        put(std::string("<") + m.role + ">" +
            (m.alternative.empty() ? "" : std::string(" ") + quoted(m.alternative)));
        ++depth;
    }
};

} // namespace

std::string trace(const std::vector<ink::Mark>& marks) {
    Tracer tracer;
    for (const auto& mark : marks)
        std::visit(tracer, mark);
    return tracer.out;
}

std::string trace(const page::Book& book) {
    std::string out = std::string("book ") + quoted(book.title) + " by " + quoted(book.author) +
                      "  " + book.language + "  " + book.created + "\n";
    for (const auto& sheet : book.sheets)
        out += std::string("page ") + quoted(sheet.label) + "  " + tenth(sheet.size.width) + " x " +
               tenth(sheet.size.height) + "\n" + trace(sheet.marks);
    for (const auto& mark : book.bookmarks)
        out += std::string("bookmark ") + std::to_string(mark.level) + "  sheet " +
               std::to_string(mark.sheet + 1) + "  " + point(mark.at) + "  " + quoted(mark.title) +
               "\n";
    return out;
}

} // namespace output
