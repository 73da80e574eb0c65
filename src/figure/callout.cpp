#include "figure/callout.hpp"

#include "words/number.hpp"
#include "words/side.hpp"

#include <algorithm>
#include <cmath>

namespace figure {

std::vector<double> spread_apart(std::span<const double> wishes, std::span<const double> sizes,
                                 double gap, double from, double to) {
    struct Pool {
        double sum = 0;
        std::size_t count = 0;
        double mean() const { return sum / static_cast<double>(count); }
    };
    std::vector<double> offsets;
    std::vector<Pool> pools;
    double offset = 0;
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        offsets.push_back(offset);
        pools.push_back({wishes[i] - offset, 1});
        while (pools.size() > 1 && pools[pools.size() - 2].mean() > pools.back().mean()) {
            const Pool last = pools.back();
            pools.pop_back();
            pools.back().sum += last.sum;
            pools.back().count += last.count;
        }
        offset += sizes[i] + gap;
    }
    const double slack = std::max(from, to - (offset - gap));
    std::vector<double> starts;
    for (const Pool& pool : pools)
        for (std::size_t k = 0; k < pool.count; ++k)
            starts.push_back(std::clamp(pool.mean(), from, slack) + offsets[starts.size()]);
    return starts;
}

ink::Drawing stacked(const std::vector<ink::Drawing>& parts) {
    ink::Drawing all;
    for (const ink::Drawing& part : parts) {
        all.add(part, {0, all.size.height});
        all.size.height += part.size.height;
        all.size.width = std::max(all.size.width, part.size.width);
    }
    return all;
}

namespace {

constexpr double callout_gap = 4;

} // namespace

double height_of(const std::vector<Callout>& callouts) {
    double height = 0;
    for (const Callout& c : callouts)
        height += c.words.size.height + callout_gap;
    return std::max(0.0, height - callout_gap);
}

void put_callouts(ink::Drawing& drawing, std::vector<Callout> callouts, const ink::Rect& column,
                  double first_line, ink::Colour colour) {
    std::ranges::stable_sort(callouts, {}, [](const Callout& c) { return c.at.y; });
    std::vector<double> wishes, sizes;
    for (const Callout& c : callouts) {
        wishes.push_back(c.at.y - first_line / 2);
        sizes.push_back(c.words.size.height);
    }
    const auto tops = spread_apart(wishes, sizes, callout_gap, column.y, column.bottom());
    for (std::size_t i = 0; i < callouts.size(); ++i) {
        const Callout& c = callouts[i];
        const bool beside_right = column.centre().x > c.at.x;
        const ink::Point edge{beside_right ? column.x - 3 : column.right() + 3,
                              tops[i] + first_line / 2};
        const ink::Point d = c.at - edge;
        const double length = std::hypot(d.x, d.y);
        if (length > c.clear + 2)
            drawing.add(ink::Stroke{ink::Path::segment(edge, c.at - d * (c.clear / length)),
                                    0.5,
                                    colour,
                                    {},
                                    ink::Cap::butt});
        drawing.add(c.words, {column.x, tops[i]});
    }
}

std::optional<ink::Point> free_place(ink::Size size, ink::Point wish, const ink::Rect& room,
                                     std::span<const ink::Rect> taken) {
    const double step = 3;
    const auto fits = [&](ink::Point at) {
        const ink::Rect box{at.x, at.y, size.width, size.height};
        return room.contains(box, 0.01) &&
               std::ranges::none_of(taken, [&](const ink::Rect& t) { return t.overlaps(box); });
    };
    const ink::Point start{
        std::clamp(wish.x, room.x, std::max(room.x, room.right() - size.width)),
        std::clamp(wish.y, room.y, std::max(room.y, room.bottom() - size.height))};
    const int rings = static_cast<int>(std::max(room.width, room.height) / step) + 1;
    for (int ring = 0; ring <= rings; ++ring)
        for (int i = -ring; i <= ring; ++i)
            for (int j = -ring; j <= ring; ++j) {
                if (std::max(std::abs(i), std::abs(j)) != ring) continue;
                const ink::Point at{start.x + i * step, start.y + j * step};
                if (fits(at)) return at;
            }
    return std::nullopt;
}

void take_line(std::vector<ink::Rect>& taken, std::span<const ink::Point> line, double half) {
    for (std::size_t i = 0; i + 1 < line.size(); ++i) {
        const ink::Point d = line[i + 1] - line[i];
        const int pieces = std::max(1, static_cast<int>(std::hypot(d.x, d.y) / 4));
        for (int k = 0; k <= pieces; ++k) {
            const ink::Point p = line[i] + d * (static_cast<double>(k) / pieces);
            taken.push_back({p.x - half, p.y - half, 2 * half, 2 * half});
        }
    }
}

std::string_view way(const Easel& easel, unit::Measure measure, double value) {
    const auto units = easel.words.voice().units;
    const double shown = value / unit::size_of_unit(unit::row(measure).kind, units);
    const double seen = words::rounded(shown, words::decimals(measure, units));
    if (seen == 0) return "none";
    const bool angle = unit::row(measure).kind == unit::Kind::angle;
    if (angle && std::abs(seen) <= words::square_within_degrees)
        return seen > 0 ? "near-right" : "near-left";
    return seen > 0 ? "right" : "left";
}

} // namespace figure
