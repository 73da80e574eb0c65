#include "hand/crumbs.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <numeric>

namespace hand {
namespace {

/// Of hands and handle: what is smaller goes, square millimetres.
constexpr double smallest_flesh = 14, smallest_handle = 70;
/// A crescent of flesh between hand and handle: area and width.
constexpr double crescent = 75, slim = 2.4;

/// A region and how it lies among the others; borders in pixel sides.
struct Round {
    int whole = 0, foreign = 0; ///< all of its border, that to another part
    int to = -1, rank = -1, longest = 0;
};

class Sweeper {
  public:
    Sweeper(Regions& regions, const std::vector<int>& area, double pixel, double least_hole)
        : g_(regions)
        , area_(area)
        , pixel_(pixel)
        , largest_(std::max(crescent, least_hole))
        , smallest_{least_hole, smallest_flesh, smallest_flesh, smallest_handle}
        , part_(area.size(), Part::paper) {
        for (std::size_t i = 0; i < g_.part.size(); ++i)
            part_[g_.label.cell[i]] = g_.part.cell[i];
    }

    std::vector<std::uint8_t> run() {
        std::vector<std::uint8_t> moved(g_.label.size(), 0);
        std::vector<int> now(area_.size());
        std::iota(now.begin(), now.end(), 0);
        for (const auto& [own, round] : rounds()) {
            if (goes(own, round)) now[own] = round.to;
        }
        for (std::size_t i = 0; i < g_.label.size(); ++i) {
            int& n = g_.label.cell[i];
            if (now[n] == n) continue;
            constexpr int most_hops = 4; // a crumb beside a crumb
            for (int hops = 0; now[n] != n && hops < most_hops; ++hops)
                n = now[n];
            g_.part.cell[i] = part_[n];
            moved[i] = 1;
        }
        return moved;
    }

  private:
    double size(int label) const { return area_[label] * pixel_ * pixel_; }

    std::map<std::pair<int, int>, int> borders() const {
        std::map<std::pair<int, int>, int> out;
        const auto note = [&](int a, int b) {
            if (a == b) return;
            if (size(a) < largest_) ++out[{a, b}];
            if (size(b) < largest_) ++out[{b, a}];
        };
        for (int r = 0; r + 1 < g_.label.height; ++r) {
            for (int c = 0; c + 1 < g_.label.width; ++c) {
                note(g_.label(r, c), g_.label(r, c + 1));
                note(g_.label(r, c), g_.label(r + 1, c));
            }
        }
        return out;
    }

    /// How readily a region goes to a neighbour.
    int rank(Part own, Part other, int sides) const {
        constexpr int touch = 6;
        if (sides <= touch || own == Part::paper) return 0;
        return other == Part::paper ? 2 : is_hand(other) ? 1 : 0;
    }

    std::map<int, Round> rounds() const {
        std::map<int, Round> out;
        for (const auto& [pair, sides] : borders()) {
            const auto& [own, other] = pair;
            Round& round = out[own];
            round.whole += sides;
            if (part_[own] != part_[other]) round.foreign += sides;
            const int k = rank(part_[own], part_[other], sides);
            if (std::pair(k, sides) <= std::pair(round.rank, round.longest)) continue;
            round.rank = k;
            round.longest = sides;
            round.to = other;
        }
        return out;
    }

    bool goes(int own, const Round& round) const {
        const bool flesh = is_hand(part_[own]);
        if (flesh && size(own) < crescent && round.rank > 0 &&
            2 * size(own) < slim * round.whole * pixel_)
            return true;
        // A patch of skin between lines of the same hand is part of its drawing.
        const bool loose = !flesh || round.foreign * 10 > round.whole * 3;
        return loose && size(own) < smallest_[std::size_t(part_[own])];
    }

    Regions& g_;
    const std::vector<int>& area_;
    double pixel_, largest_;
    std::array<double, 4> smallest_; ///< by part
    std::vector<Part> part_;         ///< by label
};

} // namespace

std::vector<std::uint8_t> drop_crumbs(Regions& regions, const std::vector<int>& area, double pixel,
                                      double least_hole) {
    return Sweeper(regions, area, pixel, least_hole).run();
}

} // namespace hand
