#include "hand/crack_test.hpp"
#include "hand/crumbs.hpp"

#include <numeric>
#include <queue>

namespace hand {
namespace {

constexpr double thin = 1.7;      ///< millimetres
constexpr double thin_run = 2.2;  ///< a thin place shorter than this stays
constexpr double paper_hole = 30; ///< square millimetres: larger views of the paper stay

Part part_of(int id) {
    if (id < 0) return Part::paper;
    if (id == rod_surface) return Part::handle;
    return id < second_hand ? Part::first : Part::second;
}

class Sorter {
  public:
    Sorter(const Depth& d, double least_hole)
        : d_(d)
        , least_hole_(least_hole)
        , w_(d.id.width)
        , h_(d.id.height) {
        out_.part = {w_, h_, Part::paper};
        for (std::size_t i = 0; i < d.id.size(); ++i)
            out_.part.cell[i] = part_of(d.id.cell[i]);
        out_.sliver = {w_, h_, 0};
    }

    Regions run() {
        find_borders();
        label();
        const std::vector<std::uint8_t> crumb = drop_crumbs(out_, area_, d_.pixel, least_hole_);
        find_slivers();
        merge();
        for (std::size_t i = 0; i < crumb.size(); ++i)
            out_.sliver.cell[i] |= crumb[i];
        return std::move(out_);
    }

  private:
    void find_borders() {
        const Slopes slopes(d_);
        out_.right = out_.below = {w_, h_, 0};
        const auto between = [&](const Grid<float>& slope, std::size_t a,
                                 std::size_t b) -> std::uint8_t {
            const Part p = out_.part.cell.data()[a], q = out_.part.cell.data()[b];
            if (p != q) return Cracks::present | Cracks::strong | Cracks::outline;
            return p == Part::paper ? 0 : border(d_, slope, a, b);
        };
        for (int r = 0; r < h_; ++r) {
            for (int c = 0; c < w_; ++c) {
                const std::size_t i = std::size_t(r) * w_ + c;
                if (c + 1 < w_) out_.right(r, c) = between(slopes.right, i, i + 1);
                if (r + 1 < h_) out_.below(r, c) = between(slopes.below, i, i + w_);
            }
        }
    }

    int root(int n) {
        while (parent_[n] != n)
            n = parent_[n] = parent_[parent_[n]];
        return n;
    }

    /// Pixels without a crack between them share a label.
    void label() {
        out_.label = {w_, h_, -1};
        parent_.clear();
        for (int r = 0; r < h_; ++r) {
            for (int c = 0; c < w_; ++c) {
                int own = c > 0 && !out_.right(r, c - 1) ? out_.label(r, c - 1) : -1;
                if (r > 0 && !out_.below(r - 1, c)) {
                    const int above = out_.label(r - 1, c);
                    if (own >= 0 && own != above) parent_[root(own)] = root(above);
                    own = above;
                }
                if (own < 0) {
                    own = int(parent_.size());
                    parent_.push_back(own);
                }
                out_.label(r, c) = own;
            }
        }
        area_.assign(parent_.size(), 0);
        for (int& n : out_.label.cell)
            ++area_[n = root(n)];
    }

    /// Shortest ways within a region, in pixels, from the `todo` pixels to those within `limit`.
    void spread(Grid<float>& g, std::vector<int> todo, float limit) const {
        constexpr float diagonal = 1.4142f;
        for (std::size_t k = 0; k < todo.size(); ++k) {
            const int at = todo[k], r = at / w_, c = at % w_;
            for (int n = 0; n < 9; ++n) {
                const int i = r + n / 3 - 1, j = c + n % 3 - 1;
                if (n == 4 || !g.inside(i, j) || out_.label(i, j) != out_.label(r, c)) continue;
                const float v = g(r, c) + (n % 2 ? 1 : diagonal);
                if (v > limit || v >= g(i, j)) continue;
                g(i, j) = v;
                todo.push_back(i * w_ + j);
            }
        }
    }

    bool at_border(int r, int c) const {
        for (const auto& [dr, dc] : around) {
            if (out_.label.inside(r + dr, c + dc) &&
                out_.label(r + dr, c + dc) != out_.label(r, c)) {
                return true;
            }
        }
        return false;
    }

    void find_slivers() {
        constexpr float far = 1e6f;
        const float radius = float(thin / 2 / d_.pixel);
        Grid<float> inside(w_, h_, far);
        std::vector<int> rim;
        for (int r = 0; r < h_; ++r) {
            for (int c = 0; c < w_; ++c) {
                const int at = r * w_ + c;
                if (open_paper(at)) {
                    inside(r, c) = 0;
                } else if (at_border(r, c)) {
                    inside(r, c) = .5f;
                    rim.push_back(at);
                }
            }
        }
        spread(inside, rim, radius);
        Grid<float> core(w_, h_, 0); // distance from where the region is thick
        std::vector<int> thick_edge;
        for (int at = 0; at < int(core.size()); ++at) {
            const float v = inside.cell.data()[at];
            if (v > 0 && v <= radius) core.cell[at] = far;
        }
        for (int at = 0; at < int(core.size()); ++at) {
            if (core.cell.data()[at] == 0 && near_thin(core, at)) thick_edge.push_back(at);
        }
        spread(core, thick_edge, far);
        collect(core, radius);
    }

    bool near_thin(const Grid<float>& core, int at) const {
        const int r = at / w_, c = at % w_;
        for (int i = std::max(r - 1, 0); i <= std::min(r + 1, h_ - 1); ++i) {
            for (int j = std::max(c - 1, 0); j <= std::min(c + 1, w_ - 1); ++j) {
                if (core(i, j) > 0) return true;
            }
        }
        return false;
    }

    /// Thin pixels in connected groups; a group counts when it reaches far enough from any thick
    /// part.
    void collect(const Grid<float>& core, float radius) {
        Grid<std::uint8_t> seen(w_, h_, 0);
        std::vector<int> group;
        for (std::size_t i = 0; i < core.size(); ++i) {
            if (seen.cell[i] || !is_thin(core, int(i), radius)) continue;
            group.assign(1, int(i));
            seen.cell[i] = 1;
            float reach = 0;
            for (std::size_t k = 0; k < group.size(); ++k) {
                const int r = group[k] / w_, c = group[k] % w_;
                reach = std::max(reach, core(r, c));
                for (int n = 0; n < 9; ++n) {
                    const int i2 = r + n / 3 - 1, j2 = c + n % 3 - 1;
                    if (!core.inside(i2, j2) || seen(i2, j2)) continue;
                    if (out_.label(i2, j2) != out_.label(r, c)) continue;
                    if (!is_thin(core, i2 * w_ + j2, radius)) continue;
                    seen(i2, j2) = 1;
                    group.push_back(i2 * w_ + j2);
                }
            }
            if (reach * d_.pixel > thin_run) {
                for (const int at : group)
                    out_.sliver.cell[at] = 1;
            }
        }
    }

    bool is_thin(const Grid<float>& core, int at, float radius) const {
        return core.cell[at] > radius + .7f && !open_paper(at);
    }

    bool open_paper(int at) const {
        return out_.part.cell[at] == Part::paper &&
               area_[out_.label.cell[at]] * d_.pixel * d_.pixel >= paper_hole;
    }

    /// Sliver pixels take region and part of the nearest pixel that is none.
    void merge() {
        std::queue<int> todo;
        Grid<std::uint8_t> open = out_.sliver;
        for (int r = 0; r < h_; ++r) {
            for (int c = 0; c < w_; ++c) {
                if (!open(r, c) && touches(open, r, c)) todo.push(r * w_ + c);
            }
        }
        while (!todo.empty()) {
            const int r = todo.front() / w_, c = todo.front() % w_;
            todo.pop();
            for (const auto& [dr, dc] : around) {
                if (!open.inside(r + dr, c + dc) || !open(r + dr, c + dc)) continue;
                open(r + dr, c + dc) = 0;
                out_.label(r + dr, c + dc) = out_.label(r, c);
                out_.part(r + dr, c + dc) = out_.part(r, c);
                todo.push((r + dr) * w_ + c + dc);
            }
        }
    }

    static bool touches(const Grid<std::uint8_t>& g, int r, int c) {
        for (const auto& [dr, dc] : around) {
            if (g.inside(r + dr, c + dc) && g(r + dr, c + dc)) return true;
        }
        return false;
    }

    static constexpr std::pair<int, int> around[4]{{0, 1}, {1, 0}, {0, -1}, {-1, 0}};
    const Depth& d_;
    double least_hole_;
    int w_, h_;
    Regions out_;
    std::vector<int> parent_, area_; ///< by label
};

} // namespace

Regions regions(const Depth& depth, double least_hole) { return Sorter(depth, least_hole).run(); }

} // namespace hand
