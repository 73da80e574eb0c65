#include "hand/chains.hpp"

#include "hand/vec.hpp"

#include <map>

namespace hand {

std::uint8_t* Corners::crack(int corner, int direction) const {
    const int r = corner / width_, c = corner % width_;
    switch (direction) {
    case 0:
        return c + 1 < width_ ? &c_.across(r, c) : nullptr;
    case 1:
        return r + 1 < c_.height() ? &c_.down(r, c) : nullptr;
    case 2:
        return c > 0 ? &c_.across(r, c - 1) : nullptr;
    default:
        return r > 0 ? &c_.down(r - 1, c) : nullptr;
    }
}

int Corners::step(int corner, int direction) const {
    constexpr int down = 1, left = 2;
    if (direction == 0) return corner + 1;
    if (direction == left) return corner - 1;
    return direction == down ? corner + width_ : corner - width_;
}

int Corners::degree(int corner) const {
    int n = 0;
    for (int d = 0; d < 4; ++d) {
        const std::uint8_t* k = crack(corner, d);
        n += k && *k;
    }
    return n;
}

namespace {

constexpr std::uint8_t walked = 128;

class Walker {
  public:
    explicit Walker(Cracks& cracks)
        : corners_(cracks) {
        const std::vector<std::uint8_t>&a = cracks.across.cell, &b = cracks.down.cell;
        const std::size_t w = std::size_t(cracks.width());
        for (std::size_t i = 0; i < a.size(); ++i) {
            if (a[i] || b[i] || (i > 0 && a[i - 1]) || (i >= w && b[i - w]))
                used_.push_back(int(i));
        }
    }

    std::vector<Run> run() {
        for (const bool ends : {true, false}) { // open runs first, then rings
            for (const int n : used_) {
                const int degree = corners_.degree(n);
                if (degree && (degree != 2) == ends) walk_all(n);
            }
        }
        for (const int n : used_)
            unmark(n);
        return std::move(out_);
    }

  private:
    void walk_all(int n) {
        for (int d = 0; d < 4; ++d) {
            std::uint8_t* k = corners_.crack(n, d);
            if (k && *k && !(*k & walked)) walk(n, d);
        }
    }

    void walk(int n, int d) {
        Run run{n};
        while (d >= 0) {
            *corners_.crack(n, d) |= walked;
            n = corners_.step(n, d);
            run.push_back(n);
            d = corners_.degree(n) == 2 ? onwards(n) : -1;
        }
        out_.push_back(std::move(run));
    }

    int onwards(int n) const {
        for (int d = 0; d < 4; ++d) {
            const std::uint8_t* k = corners_.crack(n, d);
            if (k && *k && !(*k & walked)) return d;
        }
        return -1;
    }

    void unmark(int n) {
        for (int d = 0; d < 2; ++d) {
            std::uint8_t* k = corners_.crack(n, d);
            if (k) *k = std::uint8_t(*k & ~walked);
        }
    }

    Corners corners_;
    std::vector<int> used_; ///< corners with a crack
    std::vector<Run> out_;
};

/// Direction in which a run leaves the corner it begins or ends in.
Vec leaving(const Run& run, int corner, int width) {
    constexpr int look = 8;
    const int n = std::min<int>(look, int(run.size()));
    const int far = run.front() == corner ? run[n - 1] : run[run.size() - n];
    return unit_vector(
        {double(far % width - corner % width), double(far / width - corner / width), 0});
}

class Joiner {
  public:
    Joiner(Cracks& cracks)
        : corners_(cracks)
        , runs_(Walker(cracks).run()) {
        for (int i = 0; i < int(runs_.size()); ++i)
            note(i);
    }

    std::vector<Run> run() {
        std::vector<int> junctions;
        for (const auto& [corner, ids] : ends_)
            junctions.push_back(corner);
        for (const int corner : junctions) {
            const int pairs = corners_.degree(corner) >= 4 ? 2 : 1;
            for (int k = 0; k < pairs; ++k)
                join(corner);
        }
        std::vector<Run> out;
        for (Run& r : runs_) {
            if (!r.empty()) out.push_back(std::move(r));
        }
        return out;
    }

  private:
    void note(int i) {
        const Run& r = runs_[i];
        if (r.front() == r.back()) return;
        ends_[r.front()].push_back(i);
        ends_[r.back()].push_back(i);
    }

    bool meets(int i, int corner) const {
        const Run& r = runs_[i];
        return !r.empty() && r.front() != r.back() && (r.front() == corner || r.back() == corner);
    }

    void join(int corner) {
        constexpr double straight = -0.55;
        std::vector<int> here;
        for (const int i : ends_[corner]) {
            if (meets(i, corner)) here.push_back(i);
        }
        double best = straight;
        int first = -1, second = -1;
        for (std::size_t a = 0; a < here.size(); ++a) {
            for (std::size_t b = a + 1; b < here.size(); ++b) {
                const double s = dot(leaving(runs_[here[a]], corner, corners_.width()),
                                     leaving(runs_[here[b]], corner, corners_.width()));
                if (s < best) {
                    best = s;
                    first = here[a];
                    second = here[b];
                }
            }
        }
        if (first < 0 || first == second) return;
        Run a = std::move(runs_[first]), b = std::move(runs_[second]);
        runs_[first].clear();
        runs_[second].clear();
        if (a.front() == corner) std::reverse(a.begin(), a.end());
        if (b.front() != corner) std::reverse(b.begin(), b.end());
        a.insert(a.end(), b.begin() + 1, b.end());
        runs_.push_back(std::move(a));
        note(int(runs_.size()) - 1);
    }

    Corners corners_;
    std::vector<Run> runs_;
    std::map<int, std::vector<int>> ends_;
};

} // namespace

std::vector<Run> runs(Cracks& cracks) { return Walker(cracks).run(); }
std::vector<Run> joined_runs(Cracks& cracks) { return Joiner(cracks).run(); }

} // namespace hand
