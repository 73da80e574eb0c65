#include "hand/strokes.hpp"

#include <map>

namespace hand {
namespace {

constexpr double smoothing = 1.55; ///< millimetres
constexpr double blunting = 1.2;   ///< millimetres

/// Corners where the handle is the nearer surface, or borders on paper: there its edge is the line.
bool on_handle_edge(const Depth& d, const Grid<Part>& part, int corner) {
    const int w = part.width + 1, r = corner / w, c = corner % w;
    bool handle = false, other = false;
    float front = -9e3f, flesh = -9e3f;
    for (int k = 0; k < 4; ++k) {
        const int i = std::clamp(r - k / 2, 0, part.height - 1);
        const int j = std::clamp(c - k % 2, 0, part.width - 1);
        if (part(i, j) == Part::handle) {
            handle = true;
            front = std::max(front, d.z(i, j));
        } else {
            other = true;
            if (is_hand(part(i, j))) flesh = std::max(flesh, d.z(i, j));
        }
    }
    return handle && other && front > flesh + 1.2f;
}

struct Mapped {
    Polyline line;
    std::vector<std::uint8_t> on_edge;
};

Mapped mapped(const Run& run, bool closed, const Depth& d, const Grid<Part>& part) {
    Mapped m;
    const int w = part.width + 1, n = int(run.size()) - closed;
    for (int i = 0; i < n; ++i) {
        m.line.push_back({run[i] % w * d.pixel, run[i] / w * d.pixel});
        m.on_edge.push_back(on_handle_edge(d, part, run[i]));
    }
    return m;
}

/// The crack between two neighbouring corners.
std::uint8_t flag_between(const Corners& corners, int a, int b) {
    for (int d = 0; d < 4; ++d) {
        const std::uint8_t* k = corners.crack(a, d);
        if (k && corners.step(a, d) == b) return *k;
    }
    return 0;
}

class Drawer {
  public:
    Drawer(Cracks& cracks, const Depth& d, const Grid<Part>& part, const Edges& edges)
        : corners_(cracks)
        , runs_(joined_runs(cracks))
        , d_(d)
        , part_(part)
        , edges_(edges) {}

    std::vector<Stroke> run() {
        for (const Run& r : runs_)
            draw(r);
        for (std::size_t i = 0; i < runs_.size(); ++i) {
            if (out_[i].closed) continue;
            attach(out_[i].line, runs_[i].front(), false);
            attach(out_[i].line, runs_[i].back(), true);
        }
        return std::move(out_);
    }

  private:
    void draw(const Run& run) {
        Stroke s;
        s.closed = run.front() == run.back() && run.size() > 8;
        Mapped m = mapped(run, s.closed, d_, part_);
        m.line = smoothed(m.line, s.closed, smoothing / d_.pixel);
        blunt(m.line, s.closed, blunting);
        edges_.straighten(m.line, m.on_edge);
        std::size_t outer = 0, edge = 0;
        for (std::size_t i = 0; i + 1 < run.size(); ++i) {
            outer += (flag_between(corners_, run[i], run[i + 1]) & Cracks::outline) != 0;
        }
        for (const std::uint8_t e : m.on_edge)
            edge += e;
        s.outline = outer * 2 > run.size();
        s.handle_edge = edge * 2 > m.on_edge.size();
        s.free_start = !s.closed && corners_.degree(run.front()) == 1;
        s.free_end = !s.closed && corners_.degree(run.back()) == 1;
        for (std::size_t i = 1; i + 1 < m.line.size(); ++i) {
            if (corners_.degree(run[i]) > 2) moved_[run[i]] = m.line[i];
        }
        s.line = std::move(m.line);
        out_.push_back(std::move(s));
    }

    /// A line that ends on another follows it where smoothing moved it.
    void attach(Polyline& line, int corner, bool end) const {
        const auto found = moved_.find(corner);
        if (found == moved_.end()) return;
        const int n = int(line.size()), reach = std::min(n, 12);
        const Dot by = found->second - (end ? line.back() : line.front());
        for (int i = 0; i < reach; ++i) {
            Dot& p = line[end ? n - 1 - i : i];
            p = p + by * (1 - double(i) / reach);
        }
    }

    Corners corners_;
    std::vector<Run> runs_;
    const Depth& d_;
    const Grid<Part>& part_;
    const Edges& edges_;
    std::vector<Stroke> out_;
    std::map<int, Dot> moved_;
};

} // namespace

void Edges::straighten(Polyline& line, const std::vector<std::uint8_t>& on) const {
    if (!known) return;
    const Dot normal{-along.y, along.x};
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (!on[i]) continue;
        const Dot w = line[i] - butt;
        const double s = dot(w, along), v = dot(w, normal);
        const double r = radius - taper * std::clamp(s / foreshortening, 0.0, length);
        if (std::abs(std::abs(v) - r) < .9 && s > 3) {
            line[i] = line[i] + normal * ((v < 0 ? -r : r) - v);
        }
    }
}

std::vector<Stroke> strokes(Cracks& cracks, const Depth& depth, const Grid<Part>& part,
                            const Edges& edges) {
    return Drawer(cracks, depth, part, edges).run();
}

namespace {

/// Directed border cracks, the mask to their right; turning right keeps diagonal pixels apart.
class Tracker {
  public:
    explicit Tracker(const Grid<std::uint8_t>& mask)
        : m_(mask)
        , w_(mask.width + 1)
        , used_(mask.width + 1, mask.height + 1, 0) {}

    std::vector<Run> run() {
        std::vector<Run> out;
        for (int n = 0; n < int(used_.size()); ++n) {
            if (borders(n, 0) && !(used_.cell[n] & 1)) out.push_back(follow(n));
        }
        return out;
    }

  private:
    bool set(int r, int c) const { return m_.inside(r, c) && m_(r, c); }
    /// Whether the border leaves a corner in direction 0 right, 1 down, 2 left, 3 up.
    bool borders(int n, int d) const {
        const int r = n / w_, c = n % w_;
        switch (d) {
        case 0:
            return set(r, c) && !set(r - 1, c);
        case 1:
            return set(r, c - 1) && !set(r, c);
        case 2:
            return set(r - 1, c - 1) && !set(r, c - 1);
        default:
            return set(r - 1, c) && !set(r - 1, c - 1);
        }
    }

    Run follow(int start) {
        Run run{start};
        int n = start, d = 0;
        do {
            used_.cell[n] |= std::uint8_t(1 << d);
            n += d == 0 ? 1 : d == 1 ? w_ : d == 2 ? -1 : -w_;
            run.push_back(n);
            for (const int turn : {1, 0, 3}) {
                const int next = (d + turn) % 4;
                if (borders(n, next)) {
                    d = next;
                    break;
                }
            }
        } while (n != start || (used_.cell[n] & (1 << d)) == 0);
        return run;
    }

    const Grid<std::uint8_t>& m_;
    int w_;
    Grid<std::uint8_t> used_;
};

} // namespace

std::vector<Outline> loops(const Grid<std::uint8_t>& mask, const Depth& depth,
                           const Grid<Part>& part, const Edges& edges, double least_area,
                           double sigma, double tolerance) {
    std::vector<Outline> out;
    for (const Run& run : Tracker(mask).run()) {
        Mapped m = mapped(run, true, depth, part);
        if (std::abs(area(m.line)) < least_area) continue;
        m.line = smoothed(m.line, true, sigma / depth.pixel);
        blunt(m.line, true, blunting);
        edges.straighten(m.line, m.on_edge);
        out.push_back(fitted(m.line, tolerance, true));
    }
    return out;
}

} // namespace hand
