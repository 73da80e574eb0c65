// Points, sizes and boxes on paper: 1/72 inch, x to the right, y down.
#pragma once

#include <algorithm>

namespace ink {

struct Point {
    double x = 0, y = 0;
    friend bool operator==(const Point&, const Point&) = default;
    friend Point operator+(Point a, Point b) { return {a.x + b.x, a.y + b.y}; }
    friend Point operator-(Point a, Point b) { return {a.x - b.x, a.y - b.y}; }
    friend Point operator*(Point a, double k) { return {a.x * k, a.y * k}; }
};

struct Size {
    double width = 0, height = 0;
    friend bool operator==(const Size&, const Size&) = default;
};

struct Rect {
    double x = 0, y = 0, width = 0, height = 0;
    friend bool operator==(const Rect&, const Rect&) = default;
    double right() const { return x + width; }
    double bottom() const { return y + height; }
    Point centre() const { return {x + width / 2, y + height / 2}; }
    Rect inset(double by) const { return {x + by, y + by, width - 2 * by, height - 2 * by}; }
    bool contains(const Rect& other, double slack = 0) const {
        return other.x >= x - slack && other.y >= y - slack && other.right() <= right() + slack &&
               other.bottom() <= bottom() + slack;
    }
    bool overlaps(const Rect& other, double slack = 0) const {
        return other.x < right() - slack && other.right() > x + slack &&
               other.y < bottom() - slack && other.bottom() > y + slack;
    }
    Rect united(const Rect& o) const {
        const double l = std::min(x, o.x), t = std::min(y, o.y);
        return {l, t, std::max(right(), o.right()) - l, std::max(bottom(), o.bottom()) - t};
    }
};

} // namespace ink
