#include "ball/effective_loft.hpp"

#include <algorithm>
#include <vector>

namespace ball {

namespace {

std::optional<Estimate> from_launch(const LoftEvidence& e, const Club& club, const Head& head) {
    if (!e.launch || !e.attack || !(e.club_speed || e.ball_speed)) return std::nullopt;
    const Delivery square{{}, {}, *e.attack, club.loft - e.lean, {}};
    const auto speed = e.club_speed ? *e.club_speed : club_speed_for(*e.ball_speed, square, head);
    return loft_from_launch(*e.launch, *e.attack, speed, head);
}

/// Indices of the clubs by rising loft, one for each loft.
std::vector<std::size_t> ladder(std::span<const Club> bag) {
    std::vector<std::size_t> rungs(bag.size());
    for (std::size_t i = 0; i < rungs.size(); ++i)
        rungs[i] = i;
    std::stable_sort(rungs.begin(), rungs.end(),
                     [&](std::size_t a, std::size_t b) { return bag[a].loft < bag[b].loft; });
    rungs.erase(
        std::unique(rungs.begin(), rungs.end(),
                    [&](std::size_t a, std::size_t b) { return bag[a].loft == bag[b].loft; }),
        rungs.end());
    return rungs;
}

/// Past an end of the ladder; `inner` is the rung before the end.
PlaysLike past(std::size_t end, std::size_t inner, double rung, unit::Degrees loft,
               std::span<const Club> bag) {
    const double step = std::abs((bag[inner].loft - bag[end].loft).value);
    const double off = std::abs((loft - bag[end].loft).value);
    return {end, end, off > step / 4, rung};
}

} // namespace

EffectiveLoft effective_loft(const LoftEvidence& e, const Club& club, const Head& head) {
    if (e.loft) return {LoftOrigin::measured, {*e.loft, *e.loft, *e.loft}};
    if (const auto estimate = from_launch(e, club, head))
        return {LoftOrigin::from_launch, *estimate};
    if (e.face) {
        const Soled soled{club.loft, club.lie, e.lean};
        const unit::Degrees loft = club.loft - e.lean + loft_added(soled, *e.face);
        return {LoftOrigin::from_face, {loft, loft, loft}};
    }
    return {};
}

std::optional<PlaysLike> plays_like(unit::Degrees loft, std::span<const Club> bag) {
    if (bag.empty()) return std::nullopt;
    const std::vector<std::size_t> rungs = ladder(bag);
    const std::size_t last = rungs.size() - 1;
    if (loft <= bag[rungs.front()].loft)
        return past(rungs.front(), rungs[std::min<std::size_t>(1, last)], 0, loft, bag);
    if (loft >= bag[rungs.back()].loft)
        return past(rungs.back(), rungs[last > 0 ? last - 1 : 0], static_cast<double>(last), loft,
                    bag);
    std::size_t i = 0;
    while (bag[rungs[i + 1]].loft < loft)
        ++i;
    const unit::Degrees low = bag[rungs[i]].loft, high = bag[rungs[i + 1]].loft;
    const double part = (loft - low) / (high - low), rung = static_cast<double>(i);
    if (part <= 0.25) return PlaysLike{rungs[i], rungs[i], false, rung};
    if (part >= 0.75) return PlaysLike{rungs[i + 1], rungs[i + 1], false, rung + 1};
    return PlaysLike{rungs[i], rungs[i + 1], false, rung + 0.5};
}

} // namespace ball
