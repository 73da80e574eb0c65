#include "ball/medians.hpp"

#include <algorithm>

namespace ball {

namespace {

std::array<std::optional<double>, column_count> cells(const Shot& s) {
    const auto bare = [](const auto& quantity) {
        return quantity ? std::optional(quantity->value) : std::nullopt;
    };
    return {bare(s.face),       bare(s.path),  bare(s.loft),  bare(s.attack), bare(s.club_speed),
            bare(s.ball_speed), bare(s.start), bare(s.curve), bare(s.carry),  bare(s.offline)};
}

} // namespace

Block::Block(std::span<const Shot> shots)
    : shots_(shots.size())
    , times_(shots.size(), 1) {
    for (std::uint32_t i = 0; i < shots.size(); ++i) {
        const auto row = cells(shots[i]);
        for (std::size_t c = 0; c < column_count; ++c)
            if (row[c]) columns_[c].push_back({*row[c], i});
    }
    for (auto& column : columns_)
        std::stable_sort(column.begin(), column.end(),
                         [](const Cell& a, const Cell& b) { return a.value < b.value; });
    for (std::size_t c = 0; c < column_count; ++c)
        medians_[c] = median(static_cast<Column>(c));
}

double Block::median(Column c) const {
    std::uint32_t total = 0;
    for (const Cell& cell : columns_[c])
        total += times_[cell.shot];
    if (total == 0) return medians_[c];
    // The values at the places (total - 1) / 2 and total / 2 from 0, counted up.
    std::uint32_t seen = 0;
    std::optional<double> lower;
    for (const Cell& cell : columns_[c]) {
        seen += times_[cell.shot];
        if (!lower && seen > (total - 1) / 2) lower = cell.value;
        if (seen > total / 2) return (*lower + cell.value) / 2;
    }
    return medians_[c];
}

Medians Block::draw(std::mt19937_64& random) {
    std::fill(times_.begin(), times_.end(), 0u);
    for (std::size_t i = 0; i < shots_; ++i)
        ++times_[((random() >> 32) * shots_) >> 32];
    Medians drawn{};
    for (std::size_t c = 0; c < column_count; ++c)
        drawn[c] = median(static_cast<Column>(c));
    return drawn;
}

} // namespace ball
