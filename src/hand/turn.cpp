// The turn of the hand that shows a number of knuckles, or points the V somewhere.
#include "hand/pose.hpp"

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
    return (low + high) / 2;
}

Limbs turned(const Anatomy& body, Hold hold, double turn) {
    hold.turn = turn;
    return solve(body, hold);
}

} // namespace

double turn_for_knuckles(const Anatomy& body, Hold hold, double knuckles) {
    const auto shows = [&](int f) {
        return crossing(
            [&](double turn) {
                const Limbs l = turned(body, hold, turn);
                const Limbs* one[] = {&l};
                const Field seen(one, players_camera(), Field::Parts::flesh);
                return knuckle_view(l, seen, f).share - knuckle_share;
            },
            weakest, strongest);
    };
    constexpr double margin = 6; // beyond the first and the last crossing
    const double n = std::clamp(knuckles, 0.0, double(fingers));
    const int below = std::min(int(n), fingers);
    if (n > below) return shows(below); // a half: the next knuckle just shows
    if (below == 0) return shows(0) - margin;
    const double from = shows(below - 1);
    return below == fingers ? from + margin : (from + shows(below)) / 2;
}

double turn_for_v(const Anatomy& body, Hold hold, double degrees) {
    return crossing([&](double turn) { return v_degrees(turned(body, hold, turn)) - degrees; },
                    weakest, strongest);
}

} // namespace hand
