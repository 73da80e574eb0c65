#include "ball/credit.hpp"

#include "ball/credit_surface.hpp"

#include <algorithm>
#include <cmath>
#include <random>
#include <vector>

namespace ball {

namespace {

constexpr std::size_t fewest_for_a_range = 5; // a side

/// Percentile interval of one number over all resamples.
template <class Number>
Range interval(const std::vector<AllSums>& resamples, double level, const Number& number) {
    std::vector<double> values;
    values.reserve(resamples.size());
    for (const AllSums& r : resamples)
        values.push_back(number(r));
    const double tail = (1 - level) / 2 * static_cast<double>(values.size());
    const std::size_t last = values.size() - 1;
    const std::size_t low = std::min(static_cast<std::size_t>(std::floor(tail)), last / 2);
    const auto at = [&](std::size_t k) {
        const auto place = values.begin() + static_cast<std::ptrdiff_t>(k);
        std::nth_element(values.begin(), place, values.end());
        return *place;
    };
    return {at(low), at(last - low)};
}

template <class Number>
Part part(const AllSums& sums, const std::vector<AllSums>& resamples, double level,
          const Number& number) {
    Part p{number(sums), std::nullopt};
    if (!resamples.empty()) p.range = interval(resamples, level, number);
    return p;
}

std::vector<AllSums> resample(Block& before, Block& after, const Present& present,
                              const Setting& setting, const Resampling& how) {
    std::vector<AllSums> drawn;
    if (how.count == 0 || std::min(before.size(), after.size()) < fewest_for_a_range) return drawn;
    drawn.reserve(how.count);
    std::vector<Pair> pairs(how.count);
    std::mt19937_64 random(how.seed);
    for (Pair& pair : pairs) {
        pair.before = before.draw(random);
        pair.after = after.draw(random);
    }
    if (how.fly_all) {
        for (const auto& [a, b] : pairs)
            drawn.push_back(sums(a, b, worths(a, b, present, setting)));
        return drawn;
    }
    const Surface surface({before.medians(), after.medians()}, present, setting, pairs);
    for (const Pair& pair : pairs)
        drawn.push_back(surface.at(pair));
    return drawn;
}

/// Everything of outcome o from the sums of all shots and of the resamples.
OutcomeCredit outcome(std::size_t o, const AllSums& all, const std::vector<AllSums>& drawn,
                      const Credit& credit, bool modelled, bool measured, double level) {
    const auto part_of = [&](const auto& number) {
        return part(all, drawn, level, [&](const AllSums& s) { return number(s[o]); });
    };
    OutcomeCredit c;
    if (measured) c.measured = part_of([](const Sums& s) { return s.measured; });
    if (!modelled) return c;
    c.modelled = part_of([](const Sums& s) { return s.modelled; });
    for (std::size_t f = 0; f < factor_count; ++f)
        if (credit.measured[f]) c.shares[f] = part_of([f](const Sums& s) { return s.shares[f]; });
    if (measured) {
        c.rest = part_of([](const Sums& s) { return s.rest(); });
        c.fits = std::abs(c.rest->value) <= std::abs(c.measured->value) / 2;
    }
    return c;
}

} // namespace

std::optional<Credit> credit(std::span<const Shot> before_shots, std::span<const Shot> after_shots,
                             const Setting& setting, const Resampling& resampling) {
    if (before_shots.empty() || after_shots.empty()) return std::nullopt;
    Block before(before_shots), after(after_shots);
    Present present{};
    for (std::size_t c = 0; c < column_count; ++c)
        present[c] = before.has(static_cast<Column>(c)) && after.has(static_cast<Column>(c));
    if (!present[face_column] && !present[path_column] && !has_speed(present)) return std::nullopt;

    Credit credit;
    credit.measured = factors_measured(present);
    credit.speed_from_ball = has_speed(present) && !present[club_speed_column];
    const Medians &a = before.medians(), &b = after.medians();
    const Worths w = worths(a, b, present, setting);
    credit.face_share = w.face_share, credit.share_origin = w.share_origin;
    const AllSums all = sums(a, b, w);
    const auto drawn = resample(before, after, present, setting, resampling);
    for (std::size_t o = 0; o < outcome_count; ++o) {
        const Column column = outcome_columns[o];
        const bool modelled =
            o == 0 ? present[face_column] || present[path_column] : has_speed(present);
        OutcomeCredit& c = credit.outcomes[o];
        c = outcome(o, all, drawn, credit, modelled, present[column], resampling.level);
        if (c.rest)
            c.offset = (a[column] + b[column] - w.outcome[o].front() - w.outcome[o].back()) / 2;
    }
    return credit;
}

} // namespace ball
