#include "hand/mask.hpp"

namespace hand {
namespace {

/// Per row, then per column: every cell takes what `join` makes of the cells within `n` of it.
template <class F>
Grid<std::uint8_t> joined(const Grid<std::uint8_t>& m, int n, F&& join) {
    const auto over = [&](std::uint8_t* to, const std::uint8_t* from, int count) {
        for (int i = 0; i < count; ++i)
            to[i] = join(to[i], from[i]);
    };
    const auto row = [](auto& g, int r) { return g.cell.data() + std::size_t(r) * g.width; };
    Grid<std::uint8_t> wide = m;
    for (int r = 0; r < m.height; ++r) {
        for (int k = 1; k <= std::min(n, m.width - 1); ++k) {
            over(row(wide, r), row(m, r) + k, m.width - k);
            over(row(wide, r) + k, row(m, r), m.width - k);
        }
    }
    Grid<std::uint8_t> out = wide;
    for (int r = 0; r < m.height; ++r) {
        for (int i = std::max(0, r - n); i <= std::min(m.height - 1, r + n); ++i)
            over(row(out, r), row(wide, i), m.width);
    }
    return out;
}

/// Running mean of `2 reach + 1` cells along rows, then along columns.
void box(Grid<float>& g, int reach) {
    const float whole = float(2 * reach + 1);
    std::vector<float> line(g.width);
    for (int r = 0; r < g.height; ++r) {
        float* const row = g.cell.data() + std::size_t(r) * g.width;
        std::copy_n(row, g.width, line.data());
        float sum = 0;
        for (int i = -reach; i < g.width; ++i) {
            if (i + reach < g.width) sum += line.data()[i + reach];
            if (i - reach - 1 >= 0) sum -= line.data()[i - reach - 1];
            if (i >= 0) row[i] = sum / whole;
        }
    }
    const Grid<float> rows = g;
    std::vector<float> sum(g.width, 0);
    const auto add = [&](int r, float sign) {
        if (r < 0 || r >= g.height) return;
        const float* const row = rows.cell.data() + std::size_t(r) * g.width;
        for (int c = 0; c < g.width; ++c)
            sum.data()[c] += sign * row[c];
    };
    for (int r = -reach; r < g.height; ++r) {
        add(r + reach, 1);
        add(r - reach - 1, -1);
        for (int c = 0; r >= 0 && c < g.width; ++c)
            g(r, c) = sum.data()[c] / whole;
    }
}

} // namespace

Grid<std::uint8_t> dilated(const Grid<std::uint8_t>& mask, int n) {
    return joined(mask, n, [](std::uint8_t a, std::uint8_t b) { return std::uint8_t(a | b); });
}
Grid<std::uint8_t> eroded(const Grid<std::uint8_t>& mask, int n) {
    return joined(mask, n, [](std::uint8_t a, std::uint8_t b) { return std::uint8_t(a & b); });
}

void calm(Grid<std::uint8_t>& mask, const Grid<std::uint8_t>& within, int island, int hole) {
    const int w = mask.width;
    for (const bool tone : {false, true}) { // holes first: they may join islands
        Grid<std::uint8_t> seen(w, mask.height, 0);
        std::vector<int> group;
        for (int at = 0; at < int(mask.size()); ++at) {
            const auto open = [&](int i) {
                return !seen.cell[i] && within.cell[i] && bool(mask.cell[i]) == tone;
            };
            if (!open(at)) continue;
            group.assign(1, at);
            seen.cell[at] = 1;
            const auto visit = [&](int i) {
                if (!open(i)) return;
                seen.cell[i] = 1;
                group.push_back(i);
            };
            for (std::size_t k = 0; k < group.size(); ++k) {
                const int i = group[k], c = i % w;
                if (c > 0) visit(i - 1);
                if (c + 1 < w) visit(i + 1);
                if (i >= w) visit(i - w);
                if (i + w < int(mask.size())) visit(i + w);
            }
            if (int(group.size()) >= (tone ? island : hole)) continue;
            for (const int i : group)
                mask.cell[i] = !tone;
        }
    }
}

Grid<float> mean_within(const Grid<float>& value, const Grid<std::uint8_t>& mask, double sigma) {
    // Two box passes of this reach have the variance of the Gaussian.
    const int reach = std::max(1, int(std::lround((std::sqrt(6 * sigma * sigma + 1) - 1) / 2)));
    Grid<float> v = value, w(mask.width, mask.height, 0);
    for (std::size_t i = 0; i < w.size(); ++i)
        w.cell[i] = mask.cell[i] ? 1.f : 0.f;
    for (int pass = 0; pass < 2; ++pass) {
        box(v, reach);
        box(w, reach);
    }
    for (std::size_t i = 0; i < v.size(); ++i)
        v.cell[i] /= std::max(w.cell[i], 1e-3f);
    return v;
}

} // namespace hand
