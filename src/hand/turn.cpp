// The turn of the hand that shows a number of knuckles, or points the V somewhere.
#include "hand/pose.hpp"

#include <functional>

namespace hand {
namespace {

constexpr double weakest = -32, strongest = 52;

/// Where an increasing function crosses zero, within 0.2 degrees.
template <class F>
double crossing(F&& f, double low, double high) {
    while (high - low > .2) {
        const double middle = (low + high) / 2;
        (f(middle) < 0 ? low : high) = middle;
    }
    return low; // still short of it: a half counts as the whole number below
}

Limbs turned(const Anatomy& body, Hold hold, double turn) {
    hold.turn = turn;
    return solve(body, hold);
}

} // namespace

namespace {

/// Share of the knuckle that makes the count `n` + 1: of that finger, or, where the thumb covers
/// one out of order, the next largest of all.
double deciding_share(const Limbs& l, int n, bool any_order) {
    if (!any_order) {
        const Limbs* one[] = {&l};
        return knuckle_view(l, {one, players_camera(), Field::Parts::flesh}, n).share;
    }
    std::array<double, fingers> share{};
    const auto views = knuckle_views(l);
    for (int f = 0; f < fingers; ++f)
        share[f] = views[f].share;
    std::sort(share.begin(), share.end(), std::greater<>{});
    return share[n];
}

double turn_for(const Anatomy& body, const Hold& hold, double knuckles, bool any_order) {
    const auto shows = [&](int n) {
        return crossing(
            [&](double turn) {
                return deciding_share(turned(body, hold, turn), n, any_order) - knuckle_share;
            },
            weakest, strongest);
    };
    constexpr double margin = 6; // beyond the first and the last crossing
    const int below = std::min(int(knuckles), fingers);
    if (knuckles > below) return shows(below); // a half: the next knuckle almost shows
    if (below == 0) return shows(0) - margin;
    const double from = shows(below - 1);
    return below == fingers ? from + margin : (from + shows(below)) / 2;
}

} // namespace

double turn_for_knuckles(const Anatomy& body, Hold hold, double knuckles) {
    const double n = std::clamp(knuckles, 0.0, double(fingers));
    const double turn = turn_for(body, hold, n, false);
    if (knuckle_count(knuckle_views(turned(body, hold, turn))) == int(n)) return turn;
    return turn_for(body, hold, n, true);
}

double turn_for_v(const Anatomy& body, Hold hold, double degrees) {
    return crossing([&](double turn) { return v_degrees(turned(body, hold, turn)) - degrees; },
                    weakest, strongest);
}

} // namespace hand
