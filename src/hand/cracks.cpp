#include "hand/cracks.hpp"

#include "hand/chains.hpp"

#include <numeric>

namespace hand {
namespace {

constexpr double stub = 3.0, speck = 30.0, ring_length = 16.0; ///< shorter dead ends, loose bits
                                                               ///< and rings vanish, mm
constexpr int votes_needed = 4; ///< strong cracks that keep a connected set of weak ones

class Finder {
  public:
    Finder(const Depth& d, const Regions& regions, const Grid<std::uint8_t>& faded,
           const Grid<std::uint8_t>& quiet)
        : d_(d)
        , g_(regions)
        , faded_(faded)
        , quiet_(quiet) {
        c_.across = c_.down = {d.id.width + 1, d.id.height + 1, 0};
    }

    Cracks run() {
        for (int r = 0; r < d_.id.height; ++r) {
            for (int c = 0; c < d_.id.width; ++c) {
                if (c + 1 < d_.id.width)
                    note(c_.down, r, c + 1, judge(g_.right(r, c), r, c, r, c + 1), 1);
                if (r + 1 < d_.id.height)
                    note(c_.across, r + 1, c, judge(g_.below(r, c), r, c, r + 1, c), 0);
            }
        }
        drop_weak();
        for (int round = 0; round < 6 && drop_short(); ++round) {
        }
        return std::move(c_);
    }

  private:
    struct Crack {
        int corner, direction;
    };

    void note(Grid<std::uint8_t>& grid, int r, int c, std::uint8_t flags, int direction) {
        if (!flags) return;
        grid(r, c) = flags;
        found_.push_back({r * c_.width() + c, direction});
    }

    std::uint8_t judge(std::uint8_t flags, int r, int c, int r2, int c2) const {
        if (g_.sliver(r, c) || g_.sliver(r2, c2)) {
            // A merged sliver keeps only the line towards another region.
            if (g_.label(r, c) == g_.label(r2, c2)) return 0;
            const bool outline = g_.part(r, c) != g_.part(r2, c2);
            flags = Cracks::present | Cracks::strong | (outline ? Cracks::outline : 0);
        }
        if (!flags) return 0;
        if (!(flags & Cracks::outline) && quiet_(r, c) && quiet_(r2, c2)) return 0;
        const bool dead = faded_(r, c) || g_.part(r, c) == Part::paper;
        const bool dead2 = faded_(r2, c2) || g_.part(r2, c2) == Part::paper;
        return dead && dead2 ? 0 : flags;
    }

    int root(int n) {
        while (parent_[n] != n)
            n = parent_[n] = parent_[parent_[n]];
        return n;
    }

    template <class F>
    void each_crack(F&& f) {
        Corners corners(c_);
        for (const Crack& k : found_)
            f(k.corner, corners.step(k.corner, k.direction), *corners.crack(k.corner, k.direction));
    }

    void drop_weak() {
        parent_.resize(c_.across.size());
        std::iota(parent_.begin(), parent_.end(), 0);
        each_crack([&](int a, int b, std::uint8_t&) { parent_[root(a)] = root(b); });
        std::vector<int> votes(parent_.size(), 0);
        each_crack(
            [&](int a, int, std::uint8_t& k) { votes[root(a)] += (k & Cracks::strong) != 0; });
        each_crack([&](int a, int, std::uint8_t& k) {
            if (votes[root(a)] < votes_needed) k = 0;
        });
    }

    bool drop_short() {
        Corners corners(c_);
        std::vector<const Run*> gone;
        const std::vector<Run> all = runs(c_);
        for (const Run& run : all) {
            const bool ring = run.front() == run.back();
            const int loose =
                (corners.degree(run.front()) == 1) + (corners.degree(run.back()) == 1);
            const double l = double(run.size()) * d_.pixel;
            if (ring ? l < ring_length : loose && l < (loose == 1 ? stub : speck))
                gone.push_back(&run);
        }
        for (const Run* run : gone)
            erase(corners, *run);
        return !gone.empty();
    }

    static void erase(const Corners& corners, const Run& run) {
        for (std::size_t i = 0; i + 1 < run.size(); ++i) {
            for (int d = 0; d < 4; ++d) {
                if (std::uint8_t* k = corners.crack(run[i], d);
                    k && *k && corners.step(run[i], d) == run[i + 1]) {
                    *k = 0;
                }
            }
        }
    }

    const Depth& d_;
    const Regions& g_;
    const Grid<std::uint8_t>&faded_, &quiet_;
    Cracks c_;
    std::vector<Crack> found_;
    std::vector<int> parent_;
};

} // namespace

Cracks cracks(const Depth& depth, const Regions& regions, const Grid<std::uint8_t>& faded,
              const Grid<std::uint8_t>& quiet) {
    return Finder(depth, regions, faded, quiet).run();
}

} // namespace hand
