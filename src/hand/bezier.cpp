#include "hand/curve.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace hand {
namespace {

Dot on_cubic(const std::array<Dot, 4>& c, double t) {
    const double r = 1 - t;
    return c[0] * (r * r * r) + c[1] * (3 * r * r * t) + c[2] * (3 * r * t * t) +
           c[3] * (t * t * t);
}

class Fitter {
  public:
    Fitter(Polyline line, double tolerance)
        : p_(std::move(line))
        , limit_(tolerance * tolerance) {}

    Outline run(bool closed) {
        Outline out{p_.front(), {}, closed};
        const int n = int(p_.size()) - 1;
        const auto ahead = [&](int from, int to) { return unit_vector(p_[to] - p_[from]); };
        Dot first = ahead(0, std::min(4, n)), last = ahead(n, std::max(n - 4, 0));
        if (closed) {
            first = unit_vector(p_[std::min(3, n)] - p_[std::max(n - 3, 0)]);
            last = first * -1;
        }
        fit(0, n, first, last, out.pieces);
        return out;
    }

  private:
    void fit(int a, int b, Dot t1, Dot t2, std::vector<Cubic>& out) {
        const double chord = length(p_[b] - p_[a]);
        if (b - a < 2) {
            out.push_back({p_[a] + t1 * (chord / 3), p_[b] + t2 * (chord / 3), p_[b]});
            return;
        }
        std::vector<double> u = parameters(a, b);
        int worst = (a + b) / 2;
        for (int round = 0; round < 4; ++round) {
            const std::array<Dot, 4> c = solve(a, b, t1, t2, u, chord);
            double error = 0;
            for (int i = a; i <= b; ++i) {
                const Dot d = on_cubic(c, u[i - a]) - p_[i];
                if (const double e = dot(d, d); e > error) {
                    error = e;
                    worst = i;
                }
            }
            if (error < limit_) {
                out.push_back({c[1], c[2], c[3]});
                return;
            }
            if (error > 60 * limit_) break; // no reparametrisation saves that
            reparametrise(a, c, u);
        }
        const int i = std::clamp(worst, a + 1, b - 1);
        const Dot t = unit_vector(p_[std::max(i - 3, a)] - p_[std::min(i + 3, b)]);
        fit(a, i, t1, t, out);
        fit(i, b, t * -1, t2, out);
    }

    std::vector<double> parameters(int a, int b) const {
        std::vector<double> u(b - a + 1, 0);
        for (int i = a + 1; i <= b; ++i)
            u[i - a] = u[i - a - 1] + length(p_[i] - p_[i - 1]);
        for (double& v : u)
            v /= std::max(u.back(), 1e-12);
        return u;
    }

    std::array<Dot, 4> solve(int a, int b, Dot t1, Dot t2, const std::vector<double>& u,
                             double chord) const {
        double c00 = 0, c01 = 0, c11 = 0, x0 = 0, x1 = 0;
        for (int i = a; i <= b; ++i) {
            const double t = u[i - a], r = 1 - t;
            const double b0 = r * r * r, b1 = 3 * r * r * t, b2 = 3 * r * t * t, b3 = t * t * t;
            const Dot a1 = t1 * b1, a2 = t2 * b2;
            const Dot rest = p_[i] - (p_[a] * (b0 + b1) + p_[b] * (b2 + b3));
            c00 += dot(a1, a1);
            c01 += dot(a1, a2);
            c11 += dot(a2, a2);
            x0 += dot(a1, rest);
            x1 += dot(a2, rest);
        }
        const double det = c00 * c11 - c01 * c01;
        double left = chord / 3, right = chord / 3;
        if (std::abs(det) > 1e-9) {
            left = (x0 * c11 - x1 * c01) / det;
            right = (c00 * x1 - c01 * x0) / det;
        }
        if (!(left > chord * .05 && left < 3 * chord && right > chord * .05 && right < 3 * chord)) {
            left = right = chord / 3;
        }
        return {p_[a], p_[a] + t1 * left, p_[b] + t2 * right, p_[b]};
    }

    void reparametrise(int a, const std::array<Dot, 4>& c, std::vector<double>& u) const {
        for (std::size_t i = 1; i + 1 < u.size(); ++i) {
            const double t = u[i], r = 1 - t;
            const Dot d = on_cubic(c, t) - p_[a + int(i)];
            const Dot d1 =
                ((c[1] - c[0]) * (r * r) + (c[2] - c[1]) * (2 * r * t) + (c[3] - c[2]) * (t * t)) *
                3;
            const Dot d2 = ((c[2] - c[1] * 2 + c[0]) * r + (c[3] - c[2] * 2 + c[1]) * t) * 6;
            const double slope = dot(d1, d1) + dot(d, d2);
            if (std::abs(slope) > 1e-9) u[i] = std::clamp(t - dot(d, d1) / slope, u[i - 1], 1.0);
        }
    }

    Polyline p_;
    double limit_;
};

} // namespace

Outline fitted(const Polyline& line, double tolerance, bool closed) {
    Polyline p;
    for (const Dot d : line) {
        if (p.empty() || length(d - p.back()) > 1e-6) p.push_back(d);
    }
    if (closed && p.size() > 2) p.push_back(p.front());
    if (p.size() < 2) return {p.empty() ? Dot{} : p.front(), {}, closed};
    return Fitter(std::move(p), tolerance).run(closed);
}

} // namespace hand
