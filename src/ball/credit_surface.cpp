#include "ball/credit_surface.hpp"

#include "ball/shapley.hpp"

#include <cmath>

namespace ball {

namespace {

/// Adds `k` times `b`, but for what was measured.
void add(AllSums& to, double k, const AllSums& b) {
    for (std::size_t o = 0; o < outcome_count; ++o) {
        to[o].modelled += k * b[o].modelled;
        for (std::size_t f = 0; f < factor_count; ++f)
            to[o].shares[f] += k * b[o].shares[f];
    }
}

AllSums combined(const AllSums& a, double ka, const AllSums& b, double kb) {
    AllSums out{};
    add(out, ka, a);
    add(out, kb, b);
    return out;
}

/// Standard deviation of a number of the drawn pairs.
template <class Number>
double scatter_of(const std::vector<Pair>& drawn, const Number& number) {
    double sum = 0, squares = 0;
    for (const Pair& p : drawn)
        sum += number(p);
    const double mean = sum / static_cast<double>(drawn.size());
    for (const Pair& p : drawn)
        squares += (number(p) - mean) * (number(p) - mean);
    return std::sqrt(squares / static_cast<double>(drawn.size()));
}

double value(const Pair& pair, std::size_t column, bool after) {
    return (after ? pair.after : pair.before)[column];
}

} // namespace

AllSums sums(const Medians& before, const Medians& after, const Worths& w) {
    AllSums all;
    for (std::size_t o = 0; o < outcome_count; ++o) {
        all[o].measured = after[outcome_columns[o]] - before[outcome_columns[o]];
        all[o].modelled = w.outcome[o].back() - w.outcome[o].front();
        all[o].shares = shapley<factor_count>(w.outcome[o]);
    }
    return all;
}

Surface::Surface(const Pair& middle, const Present& present, const Setting& setting,
                 const std::vector<Pair>& drawn)
    : middle_(middle)
    , present_(present) {
    if (!setting.head.face_share) share_ = fitted_share(middle.before, middle.after, present);
    // with the share given from here, the start that it was fitted to is read no more
    Present read = present;
    read[start_column] = false;
    const auto model = [&](const Pair& p, std::optional<double> share) {
        Setting set = setting;
        if (share) set.head.face_share = FaceShare{*share, {}};
        return sums(p.before, p.after, worths(p.before, p.after, read, set));
    };
    sums_ = model(middle, share_);
    AllSums share_up{};
    if (share_) {
        of_share_.step = scatter_of(drawn, [&](const Pair& p) {
            return fitted_share(p.before, p.after, present_).value_or(*share_);
        });
        if (of_share_.step > 0) {
            share_up = model(middle, *share_ + of_share_.step);
            const AllSums down = model(middle, *share_ - of_share_.step);
            of_share_.slope = combined(share_up, 0.5, down, -0.5);
            of_share_.bend = combined(combined(share_up, 0.5, down, 0.5), 1, sums_, -1);
        }
    }
    for (const bool after : {false, true})
        for (std::size_t c = face_column; c <= ball_speed_column; ++c) {
            Response r{c, after,
                       scatter_of(drawn, [&](const Pair& p) { return value(p, c, after); })};
            if (!present[c] || r.step <= 0) continue;
            const auto moved = [&](double by, std::optional<double> share) {
                Pair p = middle;
                (after ? p.after : p.before)[c] += by;
                return model(p, share);
            };
            const AllSums up = moved(r.step, share_), down = moved(-r.step, share_);
            r.slope = combined(up, 0.5, down, -0.5);
            r.bend = combined(combined(up, 0.5, down, 0.5), 1, sums_, -1);
            if (share_ && of_share_.step > 0)
                r.with_share =
                    combined(combined(moved(r.step, *share_ + of_share_.step), 1, up, -1), 1,
                             combined(share_up, 1, sums_, -1), -1);
            responses_.push_back(r);
        }
}

AllSums Surface::at(const Pair& pair) const {
    AllSums out = sums_;
    for (std::size_t o = 0; o < outcome_count; ++o)
        out[o].measured = pair.after[outcome_columns[o]] - pair.before[outcome_columns[o]];
    double s = 0; // of the share, in its own steps
    if (share_ && of_share_.step > 0)
        s = (fitted_share(pair.before, pair.after, present_).value_or(*share_) - *share_) /
            of_share_.step;
    add(out, s, of_share_.slope);
    add(out, s * s, of_share_.bend);
    for (const Response& r : responses_) {
        const double k =
            (value(pair, r.column, r.after) - value(middle_, r.column, r.after)) / r.step;
        add(out, k, r.slope);
        add(out, k * k, r.bend);
        if (s != 0) add(out, k * s, r.with_share);
    }
    return out;
}

} // namespace ball
