#include "ball/next_step.hpp"

#include "ball/flight.hpp"
#include "ball/shapley.hpp"

#include <cmath>

namespace ball {

namespace {

struct Miss {
    double start, curve, carry; // metres

    /// How far this flight is from the wanted one.
    double from(const Miss& wanted) const {
        return std::hypot(start - wanted.start, curve - wanted.curve);
    }
};

Miss miss(const Delivery& d, const Head& head, const Air& air) {
    const Flight f = fly(strike(d, head), air);
    return {f.carry.value * std::sin(unit::radians(strike(d, head).start)), f.curve.value,
            f.carry.value};
}

} // namespace

Remaining what_next(const Delivery& after, const Head& head, const Air& air,
                    unit::Degrees wanted_face, unit::Degrees wanted_path) {
    Air still = air;
    still.wind = {};
    std::array<Miss, 4> misses{};
    for (std::size_t s = 0; s < misses.size(); ++s) {
        Delivery d = after;
        d.face = s & 1u ? after.face : wanted_face;
        d.path = s & 2u ? after.path : wanted_path;
        misses[s] = miss(d, head, still);
    }
    const Miss &wanted = misses.front(), &left = misses.back();
    std::array<double, 4> worth{};
    for (std::size_t s = 0; s < worth.size(); ++s)
        worth[s] = misses[s].from(wanted);
    const auto share = shapley<2>(worth);

    Remaining r;
    r.miss = {worth.back()}, r.start = {left.start}, r.curve = {left.curve};
    if (worth.back() > 0) r.face = share[0] / worth.back(), r.path = share[1] / worth.back();
    if (worth.back() < little_miss * left.carry)
        r.step = NextStep::little_left;
    else if (r.face >= most_of_it)
        r.step = NextStep::mostly_face;
    else if (r.path >= most_of_it)
        r.step = NextStep::mostly_path;
    else
        r.step = NextStep::both;
    return r;
}

} // namespace ball
