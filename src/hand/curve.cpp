#include "hand/curve.hpp"

#include <algorithm>
#include <cmath>

namespace hand {

double length(Dot d) { return std::sqrt(d.x * d.x + d.y * d.y); }
Dot unit_vector(Dot d) {
    const double l = length(d);
    return l > 1e-12 ? d * (1 / l) : d;
}

std::vector<double> arc_length(const Polyline& line) {
    std::vector<double> s(line.size(), 0);
    for (std::size_t i = 1; i < line.size(); ++i)
        s[i] = s[i - 1] + length(line[i] - line[i - 1]);
    return s;
}

Polyline smoothed(const Polyline& line, bool closed, double sigma) {
    const int n = int(line.size());
    if (n < 5) return line;
    const double s = closed ? sigma : std::min(sigma, n / 6.0);
    const int reach = std::min(int(3.5 * s) + 1, n - 1);
    std::vector<double> weight(reach + 1);
    double sum = 0;
    for (int k = 0; k <= reach; ++k) {
        weight[k] = std::exp(-.5 * k * k / (s * s));
        sum += k ? 2 * weight[k] : weight[k];
    }
    const auto at = [&](int i) {
        if (closed) return line[((i % n) + n) % n];
        if (i < 0) return line.front() * 2 - line[std::min(-i, n - 1)];
        if (i >= n) return line.back() * 2 - line[std::max(2 * (n - 1) - i, 0)];
        return line[i];
    };
    Polyline out(n);
    for (int i = 0; i < n; ++i) {
        Dot d = line[i] * weight[0];
        for (int k = 1; k <= reach; ++k)
            d = d + (at(i - k) + at(i + k)) * weight[k];
        out[i] = d * (1 / sum);
    }
    return out;
}

Polyline resampled(const Polyline& line, double step) {
    if (line.size() < 2) return line;
    const std::vector<double> s = arc_length(line);
    const int n = std::max(2, int(std::lround(s.back() / step)) + 1);
    Polyline out;
    std::size_t k = 0;
    for (int i = 0; i < n; ++i) {
        const double want = s.back() * i / (n - 1);
        while (k + 2 < line.size() && s[k + 1] < want)
            ++k;
        const double span = s[k + 1] - s[k], t = span > 1e-12 ? (want - s[k]) / span : 0;
        out.push_back(line[k] + (line[k + 1] - line[k]) * std::clamp(t, 0.0, 1.0));
    }
    return out;
}

Outline polygon(const Polyline& corners, bool closed) {
    Outline o{corners.front(), {}, closed};
    for (std::size_t i = 1; i < corners.size() + closed; ++i) {
        const Dot a = corners[i - 1], b = corners[i % corners.size()];
        o.pieces.push_back({lerp(a, b, 1 / 3.), lerp(a, b, 2 / 3.), b});
    }
    return o;
}

Polyline flattened(const Outline& outline, int points_a_piece) {
    Polyline out{outline.start};
    Dot from = outline.start;
    for (const Cubic& c : outline.pieces) {
        for (int i = 1; i <= points_a_piece; ++i) {
            const double t = double(i) / points_a_piece, r = 1 - t;
            out.push_back(from * (r * r * r) + c.a * (3 * r * r * t) + c.b * (3 * r * t * t) +
                          c.to * (t * t * t));
        }
        from = c.to;
    }
    return out;
}

double area(const Polyline& line) {
    double a = 0;
    for (std::size_t i = 0; i < line.size(); ++i) {
        const Dot p = line[i], q = line[(i + 1) % line.size()];
        a += p.x * q.y - q.x * p.y;
    }
    return a / 2;
}

void blunt(Polyline& line, bool closed, double reach) {
    constexpr double back = -.82;
    const int n = int(line.size()), most = n / 4;
    const auto at = [&](int i) -> Dot& { return line[(i + n) % n]; };
    const auto walk = [&](int from, int way) { // to the point that lies `reach` along the line
        double gone = 0;
        int i = from;
        while (gone < reach && std::abs(i - from) < most && (closed || (i > 0 && i < n - 1))) {
            gone += length(at(i + way) - at(i));
            i += way;
        }
        return i;
    };
    for (int i = 0; i < n; ++i) {
        const int from = walk(i, -1), to = walk(i, 1);
        const Dot a = at(from), b = at(to), tip = at(i);
        if (from == i || to == i || dot(unit_vector(tip - a), unit_vector(b - tip)) > back)
            continue;
        for (int k = from + 1; k < to; ++k)
            at(k) = lerp(a, b, double(k - from) / (to - from));
    }
}

} // namespace hand
