// Marks: all that can be put on paper, as plain values. A drawing is data; painting decides
// nothing.
#pragma once

#include "ink/geometry.hpp"

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace ink {

/// sRGB, 0 to 1.
struct Colour {
    double red = 0, green = 0, blue = 0;
    friend bool operator==(const Colour&, const Colour&) = default;
};
inline constexpr Colour black{0, 0, 0};
inline constexpr Colour white{1, 1, 1};
constexpr Colour grey(double level) { return {level, level, level}; }

/// One piece of a path. `line` uses `to`; `curve` is a cubic with controls `a` and `b`.
struct Segment {
    enum class Verb : std::uint8_t { move, line, curve, close } verb = Verb::move;
    Point a, b, to;
};

class Path {
  public:
    Path& move(Point to);
    Path& line(Point to);
    Path& curve(Point a, Point b, Point to);
    Path& close();
    const std::vector<Segment>& segments() const { return segments_; }
    bool empty() const { return segments_.empty(); }
    Rect bounds() const; ///< of all points, controls included
    void shift(Point by);
    Path moved(Point by) const;
    Path scaled(double kx, double ky) const; ///< about the origin; a negative kx mirrors

    static Path segment(Point from, Point to);
    static Path rect(Rect r);
    static Path round_rect(Rect r, double radius);
    static Path circle(Point centre, double radius);
    static Path polyline(const std::vector<Point>& points, bool closed = false);

  private:
    std::vector<Segment> segments_;
};

struct Fill {
    Path path;
    Colour colour;
};

enum class Cap : std::uint8_t { butt, round };

struct Stroke {
    Path path;
    double width = 0.8;
    Colour colour;
    std::vector<double> dash;
    Cap cap = Cap::round;
};

/// How text looks. Family and weight are names of the private font set.
struct Style {
    std::string family = "Lato";
    double size = 11; ///< points
    int weight = 400; ///< 400 regular, 700 bold, 900 black
    bool italic = false;
    Colour colour;
    double tracking = 0;  ///< extra space between letters, points
    bool tabular = false; ///< figures of even width
    friend bool operator==(const Style&, const Style&) = default;
};

/// Glyphs of one set line, shaped once and kept; only room `text` knows what is inside.
struct Shaped;

/// One set line of text: baseline start, the text itself (so that it stays text) and its advance.
struct Words {
    Point at;
    std::string text;
    Style style;
    double width = 0;
    double ascent = 0, descent = 0; ///< of the face, not of these letters
    double turn = 0;                ///< degrees, anticlockwise, about `at`
    std::shared_ptr<const Shaped> shaped;
    Rect box() const { return {at.x, at.y - ascent, width, ascent + descent}; } ///< unturned
};

/// An encoded picture (PNG or JPEG bytes) fitted into `box`.
struct Picture {
    Rect box;
    std::string format; ///< "png" or "jpeg"
    std::shared_ptr<const std::string> bytes;
};

/// A link over `box` to a named place ("#drill-1") or an address. `says` is read out for it.
struct Link {
    Rect box;
    std::string target;
    std::string says;
};

/// A named place that links and bookmarks lead to.
struct Place {
    Point at;
    std::string name;
};

/// Opens or closes a structure element. `role` is a standard structure type ("H1", "P", "Figure",
/// "Table", "TR", "TH", "TD", "L", "LI", "Lbl", "LBody") or "Artifact".
struct Tag {
    bool opens = true;
    std::string role;
    std::string alternative; ///< alternative text of a Figure
};

/// Clips everything up to the matching closing clip.
struct Clip {
    bool opens = true;
    Path path;
};

using Mark = std::variant<Fill, Stroke, Words, Picture, Link, Place, Tag, Clip>;

/// A picture as data: marks in drawing order, inside a nominal size.
struct Drawing {
    Size size;
    std::vector<Mark> marks;
    std::string message; ///< what the picture says, for alternative text; empty for decoration

    void add(Mark mark) { marks.push_back(std::move(mark)); }
    void add(Drawing other, Point at); ///< its marks, moved
};

Mark moved(Mark mark, Point by);

} // namespace ink
