#include "hand/crack_test.hpp"

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
    explicit Sorter(const Depth& d)
        : d_(d)
        , w_(d.id.width)
        , h_(d.id.height) {
        out_.part = {w_, h_, Part::paper};
        for (std::size_t i = 0; i < d.id.size(); ++i)
            out_.part.cell[i] = part_of(d.id.cell[i]);
        out_.sliver = {w_, h_, 0};
    }

    Regions run() {
        open_borders();
        label();
        find_slivers();
        merge();
        return std::move(out_);
    }

  private:
    /// Bit 0: open to the right, bit 1: open downwards.
    void open_borders() {
        open_ = {w_, h_, 0};
        for (int r = 0; r < h_; ++r) {
            for (int c = 0; c < w_; ++c) {
                if (c + 1 < w_ && !border(d_, out_.part, r, c, r, c + 1).any()) open_(r, c) |= 1;
                if (r + 1 < h_ && !border(d_, out_.part, r, c, r + 1, c).any()) open_(r, c) |= 2;
            }
        }
    }

    bool joined(int r, int c, int dr, int dc) const {
        if (!open_.inside(r + dr, c + dc)) return false;
        if (dc > 0) return open_(r, c) & 1;
        if (dc < 0) return open_(r, c - 1) & 1;
        return dr > 0 ? open_(r, c) & 2 : open_(r - 1, c) & 2;
    }

    void label() {
        out_.label = {w_, h_, -1};
        std::vector<int> stack;
        for (std::size_t i = 0; i < out_.label.size(); ++i) {
            if (out_.label.cell[i] >= 0) continue;
            const int id = int(area_.size());
            area_.push_back(0);
            out_.label.cell[i] = id;
            stack.push_back(int(i));
            while (!stack.empty()) {
                const int at = stack.back(), r = at / w_, c = at % w_;
                stack.pop_back();
                ++area_[id];
                for (const auto& [dr, dc] : around) {
                    if (!joined(r, c, dr, dc) || out_.label(r + dr, c + dc) >= 0) continue;
                    out_.label(r + dr, c + dc) = id;
                    stack.push_back((r + dr) * w_ + c + dc);
                }
            }
        }
    }

    /// Distance within a region, in pixels, from the pixels already at their value in `g`.
    void spread(Grid<float>& g) const {
        constexpr float diagonal = 1.4142f;
        for (int pass = 0; pass < 2; ++pass) {
            const int s = pass % 2 ? -1 : 1;
            for (int i = 0; i < h_; ++i) {
                const int r = s > 0 ? i : h_ - 1 - i;
                for (int j = 0; j < w_; ++j) {
                    const int c = s > 0 ? j : w_ - 1 - j;
                    float v = g(r, c);
                    if (v == 0) continue;
                    const int id = out_.label(r, c);
                    const auto from = [&](int dr, int dc, float step) {
                        if (g.inside(r + dr, c + dc) && out_.label(r + dr, c + dc) == id) {
                            v = std::min(v, g(r + dr, c + dc) + step);
                        }
                    };
                    from(-s, 0, 1);
                    from(0, -s, 1);
                    from(-s, -s, diagonal);
                    from(-s, s, diagonal);
                    g(r, c) = v;
                }
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
        const float radius = float(thin / 2 / d_.pixel);
        Grid<float> inside(w_, h_, 1e6f);
        for (int r = 0; r < h_; ++r) {
            for (int c = 0; c < w_; ++c) {
                if (open_paper(r * w_ + c)) {
                    inside(r, c) = 0;
                } else if (at_border(r, c)) {
                    inside(r, c) = .5f;
                }
            }
        }
        spread(inside);
        Grid<float> core(w_, h_, 1e6f);
        for (std::size_t i = 0; i < core.size(); ++i) {
            if (inside.cell[i] == 0 || inside.cell[i] > radius) core.cell[i] = 0;
        }
        spread(core);
        collect(core, radius);
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
    int w_, h_;
    Regions out_;
    Grid<std::uint8_t> open_;
    std::vector<int> area_;
};

} // namespace

Regions regions(const Depth& depth) { return Sorter(depth).run(); }

} // namespace hand
