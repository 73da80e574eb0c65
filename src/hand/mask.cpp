#include "hand/mask.hpp"

namespace hand {
namespace {

/// Per row and per column: pixels within `n` of a pixel that is `wanted` become `wanted`.
Grid<std::uint8_t> grown(Grid<std::uint8_t> m, int n, std::uint8_t wanted) {
    const auto sweep = [&](int count, int size, auto&& at) {
        std::vector<int> since(size);
        for (int line = 0; line < count; ++line) {
            int gap = n + 1;
            for (int i = 0; i < size; ++i) {
                gap = at(line, i) == wanted ? 0 : gap + 1;
                since[i] = gap;
            }
            gap = n + 1;
            for (int i = size - 1; i >= 0; --i) {
                gap = since[i] == 0 ? 0 : gap + 1;
                if (gap <= n || since[i] <= n) at(line, i) = wanted;
            }
        }
    };
    sweep(m.height, m.width, [&](int l, int i) -> std::uint8_t& { return m(l, i); });
    sweep(m.width, m.height, [&](int l, int i) -> std::uint8_t& { return m(i, l); });
    return m;
}

/// Running mean of `2 reach + 1` cells along rows, then along columns.
void box(Grid<float>& g, int reach) {
    const auto sweep = [&](int count, int size, auto&& at) {
        std::vector<float> line(size);
        for (int l = 0; l < count; ++l) {
            float sum = 0;
            for (int i = 0; i < size; ++i)
                line[i] = at(l, i);
            for (int i = -reach; i < size; ++i) {
                if (i + reach < size) sum += line[i + reach];
                if (i - reach - 1 >= 0) sum -= line[i - reach - 1];
                if (i >= 0) at(l, i) = sum / float(2 * reach + 1);
            }
        }
    };
    sweep(g.height, g.width, [&](int l, int i) -> float& { return g(l, i); });
    sweep(g.width, g.height, [&](int l, int i) -> float& { return g(i, l); });
}

} // namespace

Grid<std::uint8_t> dilated(const Grid<std::uint8_t>& mask, int n) { return grown(mask, n, 1); }
Grid<std::uint8_t> eroded(const Grid<std::uint8_t>& mask, int n) { return grown(mask, n, 0); }

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
