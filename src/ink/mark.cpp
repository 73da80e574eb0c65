#include "ink/mark.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace ink {

namespace {

constexpr double kappa = 0.5522847498; // a quarter circle as one cubic

} // namespace

Path& Path::move(Point to) {
    segments_.push_back({Segment::Verb::move, {}, {}, to});
    return *this;
}

Path& Path::line(Point to) {
    segments_.push_back({Segment::Verb::line, {}, {}, to});
    return *this;
}

Path& Path::curve(Point a, Point b, Point to) {
    segments_.push_back({Segment::Verb::curve, a, b, to});
    return *this;
}

Path& Path::close() {
    segments_.push_back({Segment::Verb::close, {}, {}, {}});
    return *this;
}

Rect Path::bounds() const {
    double l = 1e300, t = 1e300, r = -1e300, b = -1e300;
    const auto take = [&](Point p) {
        l = std::min(l, p.x), r = std::max(r, p.x);
        t = std::min(t, p.y), b = std::max(b, p.y);
    };
    for (const auto& s : segments_) {
        if (s.verb == Segment::Verb::close) continue;
        take(s.to);
        if (s.verb == Segment::Verb::curve) take(s.a), take(s.b);
    }
    if (r < l) return {};
    return {l, t, r - l, b - t};
}

void Path::shift(Point by) {
    for (auto& s : segments_)
        s.a = s.a + by, s.b = s.b + by, s.to = s.to + by;
}

Path Path::moved(Point by) const {
    Path out = *this;
    out.shift(by);
    return out;
}

Path Path::scaled(double kx, double ky) const {
    Path out = *this;
    const auto scale = [&](Point& p) { p = {p.x * kx, p.y * ky}; };
    for (auto& s : out.segments_)
        scale(s.a), scale(s.b), scale(s.to);
    return out;
}

Path Path::segment(Point from, Point to) { return Path().move(from).line(to); }

Path Path::rect(Rect r) {
    return Path()
        .move({r.x, r.y})
        .line({r.right(), r.y})
        .line({r.right(), r.bottom()})
        .line({r.x, r.bottom()})
        .close();
}

Path Path::round_rect(Rect r, double radius) {
    const double q = std::min({radius, r.width / 2, r.height / 2}), k = q * (1 - kappa);
    return Path()
        .move({r.x + q, r.y})
        .line({r.right() - q, r.y})
        .curve({r.right() - k, r.y}, {r.right(), r.y + k}, {r.right(), r.y + q})
        .line({r.right(), r.bottom() - q})
        .curve({r.right(), r.bottom() - k}, {r.right() - k, r.bottom()},
               {r.right() - q, r.bottom()})
        .line({r.x + q, r.bottom()})
        .curve({r.x + k, r.bottom()}, {r.x, r.bottom() - k}, {r.x, r.bottom() - q})
        .line({r.x, r.y + q})
        .curve({r.x, r.y + k}, {r.x + k, r.y}, {r.x + q, r.y})
        .close();
}

Path Path::circle(Point c, double q) {
    const double k = q * kappa;
    return Path()
        .move({c.x + q, c.y})
        .curve({c.x + q, c.y + k}, {c.x + k, c.y + q}, {c.x, c.y + q})
        .curve({c.x - k, c.y + q}, {c.x - q, c.y + k}, {c.x - q, c.y})
        .curve({c.x - q, c.y - k}, {c.x - k, c.y - q}, {c.x, c.y - q})
        .curve({c.x + k, c.y - q}, {c.x + q, c.y - k}, {c.x + q, c.y})
        .close();
}

Path Path::polyline(const std::vector<Point>& points, bool closed) {
    Path path;
    for (const auto& p : points)
        path.empty() ? path.move(p) : path.line(p);
    if (closed && !path.empty()) path.close();
    return path;
}

namespace {

struct Mover {
    Point by;
    void operator()(Fill& m) const { m.path.shift(by); }
    void operator()(Stroke& m) const { m.path.shift(by); }
    void operator()(Clip& m) const { m.path.shift(by); }
    void operator()(Tag&) const {}
    void operator()(Words& m) const { m.at = m.at + by; }
    void operator()(Place& m) const { m.at = m.at + by; }
    void operator()(Picture& m) const { shift(m.box); }
    void operator()(Link& m) const { shift(m.box); }
    void shift(Rect& box) const { box.x += by.x, box.y += by.y; }
};

} // namespace

Mark moved(Mark mark, Point by) {
    std::visit(Mover{by}, mark);
    return mark;
}

void Drawing::add(Drawing other, Point at) {
    for (auto& mark : other.marks)
        std::visit(Mover{at}, mark);
    if (marks.empty()) {
        marks = std::move(other.marks);
        return;
    }
    const std::size_t wanted = marks.size() + other.marks.size();
    if (wanted > marks.capacity()) marks.reserve(std::max(wanted, 2 * marks.size()));
    std::ranges::move(other.marks, std::back_inserter(marks));
}

} // namespace ink
