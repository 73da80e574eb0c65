#include "hand/trace.hpp"

#include "hand/rays.hpp"

#include <array>
#include <cstdint>

namespace hand {
namespace {

constexpr int block = 3;        ///< pixels between the rays of the first pass
constexpr int tile = 8 * block; ///< pixels over which the solids are culled once

struct Tile {
    std::vector<Culled> solids;
    const Rod* rod = nullptr;
};

/// Distance in the picture plane between a point and a solid's axis.
float plane_distance(const Solid& s, float x, float y) {
    const float px = x - s.ax, py = y - s.ay, l = s.bx * s.bx + s.by * s.by;
    const float t = l > 1e-6f ? std::clamp((px * s.bx + py * s.by) / l, 0.f, 1.f) : 0.f;
    return std::sqrt((px - t * s.bx) * (px - t * s.bx) + (py - t * s.by) * (py - t * s.by));
}

class Tracer {
  public:
    Tracer(const Field& field, const Window& window, double pixel)
        : scene_(field.scene()) {
        const auto whole = [&](double mm) {
            return int(std::ceil(mm / pixel / block)) * block + 1;
        };
        const int w = whole(window.width), h = whole(window.height);
        d_.window = window;
        d_.pixel = pixel;
        d_.z = {w, h, behind};
        d_.nx = d_.ny = d_.nz = {w, h, 0};
        d_.id = {w, h, -1};
        traced_ = {w, h, 0};
    }

    Depth run() {
        for (int r = 0; r < d_.z.height; r += tile) {
            for (int c = 0; c < d_.z.width; c += tile)
                fill_tile(r, c);
        }
        heal();
        return std::move(d_);
    }

  private:
    Tile cull(int row, int column) const {
        constexpr float fillet = 14;
        const float half = float(tile * d_.pixel / 2), reach = half * 1.42f + fillet + .5f;
        const float x = float(d_.x(column + tile / 2.0)), y = float(d_.y(row + tile / 2.0));
        Tile t;
        for (const Solid& s : scene_.solids) {
            const float r = std::max(s.ra, s.ra + s.slope);
            if (plane_distance(s, x, y) < r + reach) t.solids.emplace_back(s);
        }
        if (!scene_.rod) return t;
        const Rod& h = *scene_.rod;
        const Solid axis{
            h.ox, h.oy, h.oz, h.dx * h.length, h.dy * h.length, h.dz * h.length, 0, h.radius,
            0,    0,    0};
        if (plane_distance(axis, x, y) < h.radius + reach) t.rod = scene_.rod;
        return t;
    }

    /// Notes a pixel that needs a ray of its own.
    void want(int row, int column) {
        std::uint8_t& done = traced_(row, column);
        if (!done) wanted_.emplace_back(row, column);
        done = 1;
    }

    /// Casts the rays that were wanted, four neighbours at a time.
    void cast(const Tile& t) {
        for (std::size_t i = 0; i < wanted_.size(); i += lanes) {
            const std::size_t n = std::min<std::size_t>(lanes, wanted_.size() - i);
            Lanes x, y;
            for (std::size_t k = 0; k < lanes; ++k) {
                const auto& [row, column] = wanted_[i + std::min(k, n - 1)];
                x[k] = float(d_.x(column));
                y[k] = float(d_.y(row));
            }
            const Hits hits = rays_.cast(t.solids, t.rod, x, y);
            for (std::size_t k = 0; k < n; ++k) {
                if (hits.slot[k] < 0) continue;
                const auto& [row, column] = wanted_[i + k];
                store(row, column, hits.z[k], {hits.nx[k], hits.ny[k], hits.nz[k]},
                      surface_of(hits.slot[k]));
            }
        }
        wanted_.clear();
    }

    static int surface_of(int slot) {
        if (slot == rod_slot) return rod_surface;
        return slot < hand_slots ? slot : second_hand + slot - hand_slots;
    }

    void store(int row, int column, float z, Vec n, int id) {
        d_.z(row, column) = z;
        d_.nx(row, column) = float(n.x);
        d_.ny(row, column) = float(n.y);
        d_.nz(row, column) = float(n.z);
        d_.id(row, column) = static_cast<signed char>(id);
    }

    void fill_tile(int row, int column) {
        const Tile t = cull(row, column);
        if (t.solids.empty() && !t.rod) return;
        const int last_row = std::min(row + tile, d_.z.height - 1);
        const int last_column = std::min(column + tile, d_.z.width - 1);
        for (int r = row; r <= last_row; r += block) {
            for (int c = column; c <= last_column; c += block)
                want(r, c);
        }
        cast(t);
        for (int r = row; r < last_row; r += block) {
            for (int c = column; c < last_column; c += block) {
                if (!smooth(r, c)) want_block(r, c);
            }
        }
        cast(t);
        for (int r = row; r < last_row; r += block) {
            for (int c = column; c < last_column; c += block) {
                if (smooth(r, c)) interpolate(r, c);
            }
        }
    }

    void want_block(int r, int c) {
        for (int i = 0; i <= block; ++i) {
            for (int j = 0; j <= block; ++j)
                want(r + i, c + j);
        }
    }

    /// All four corners on one surface without a step or a bend between them.
    bool smooth(int r, int c) const {
        const int r1 = r + block, c1 = c + block;
        const int id = d_.id(r, c);
        if (d_.id(r, c1) != id || d_.id(r1, c) != id || d_.id(r1, c1) != id) return false;
        if (id < 0) return true;
        const float twist = d_.z(r, c) + d_.z(r1, c1) - d_.z(r, c1) - d_.z(r1, c);
        const float range = std::max({d_.z(r, c), d_.z(r1, c1), d_.z(r, c1), d_.z(r1, c)}) -
                            std::min({d_.z(r, c), d_.z(r1, c1), d_.z(r, c1), d_.z(r1, c)});
        if (std::abs(twist) > .3f || range > 2.5f) return false;
        const auto agree = [&](int a, int b) {
            return d_.nx(r, c) * d_.nx(a, b) + d_.ny(r, c) * d_.ny(a, b) +
                       d_.nz(r, c) * d_.nz(a, b) >
                   .93f;
        };
        return agree(r, c1) && agree(r1, c) && agree(r1, c1);
    }

    void interpolate(int r, int c) {
        const signed char id = d_.id(r, c);
        if (id < 0) return;
        for (int i = 0; i <= block; ++i) {
            for (int j = 0; j <= block; ++j) {
                if (traced_(r + i, c + j)) continue;
                const float a = float(i) / block, b = float(j) / block;
                const auto mixed = [&](const Grid<float>& g) {
                    return (1 - a) * ((1 - b) * g(r, c) + b * g(r, c + block)) +
                           a * ((1 - b) * g(r + block, c) + b * g(r + block, c + block));
                };
                store(r + i, c + j, mixed(d_.z), {mixed(d_.nx), mixed(d_.ny), mixed(d_.nz)}, id);
            }
        }
    }

    /// A grazing ray may slip past a surface: a pixel whose depth agrees with fewer than three of
    /// its neighbours takes over the neighbour of median depth.
    void heal() {
        for (int round = 0; round < 3; ++round) {
            std::vector<std::pair<int, int>> bad;
            for (int r = 1; r + 1 < d_.z.height; ++r) {
                for (int c = 1; c + 1 < d_.z.width; ++c) {
                    if (traced_(r, c) && lonely(r, c)) bad.emplace_back(r, c);
                }
            }
            if (bad.empty()) return;
            struct Cell {
                float z;
                Vec n;
                int id;
            };
            std::vector<Cell> better;
            for (const auto& [r, c] : bad) {
                const auto [i, j] = median(d_.z, r, c);
                better.push_back(
                    {d_.z(i, j), {d_.nx(i, j), d_.ny(i, j), d_.nz(i, j)}, d_.id(i, j)});
            }
            for (std::size_t i = 0; i < bad.size(); ++i) {
                store(bad[i].first, bad[i].second, better[i].z, better[i].n, better[i].id);
            }
        }
    }

    bool lonely(int r, int c) const {
        int friends = 0;
        for (int i = -1; i <= 1; ++i) {
            for (int j = -1; j <= 1; ++j) {
                friends += (i || j) && std::abs(d_.z(r + i, c + j) - d_.z(r, c)) < 2.5f;
            }
        }
        return friends < 3;
    }

    static std::pair<int, int> median(const Grid<float>& z, int r, int c) {
        std::array<std::pair<float, int>, 8> v;
        int n = 0;
        for (int k = 0; k < 9; ++k) {
            if (k != 4) v[n++] = {z(r + k / 3 - 1, c + k % 3 - 1), k};
        }
        std::sort(v.begin(), v.end());
        return {r + v[4].second / 3 - 1, c + v[4].second % 3 - 1};
    }

    Scene scene_;
    Depth d_;
    Grid<std::uint8_t> traced_;
    std::vector<std::pair<int, int>> wanted_; ///< row, column
    Rays rays_;
};

} // namespace

Depth trace(const Field& field, const Window& window, double pixel) {
    return Tracer(field, window, pixel).run();
}

} // namespace hand
