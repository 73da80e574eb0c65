// A rectangle of values, row by row from the top.
#pragma once

#include <cstddef>
#include <vector>

namespace hand {

template <class T>
struct Grid {
    int width = 0, height = 0;
    std::vector<T> cell;

    Grid() = default;
    Grid(int w, int h, T value = T{})
        : width(w)
        , height(h)
        , cell(std::size_t(w) * h, value) {}
    /// Unchecked: the innermost loops of a drawing.
    T& operator()(int row, int column) { return cell.data()[std::size_t(row) * width + column]; }
    const T& operator()(int row, int column) const {
        return cell.data()[std::size_t(row) * width + column];
    }
    bool inside(int row, int column) const {
        return row >= 0 && row < height && column >= 0 && column < width;
    }
    std::size_t size() const { return cell.size(); }
};

} // namespace hand
