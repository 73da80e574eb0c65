#include "ball/estimate.hpp"

#include "ball/flight.hpp"

#include <algorithm>
#include <cmath>

namespace ball {

namespace {

constexpr double lift_scatter = 0.12;
constexpr double most_face_to_path = 30; // degrees

/// The zero of a rising function between lower and upper; empty when it has none there.
template <class Function>
std::optional<double> zero_between(double lower, double upper, const Function& rising) {
    if (rising(lower) > 0 || rising(upper) < 0) return std::nullopt;
    for (int i = 0; i < 40; ++i) {
        const double middle = (lower + upper) / 2;
        (rising(middle) < 0 ? lower : upper) = middle;
    }
    return (lower + upper) / 2;
}

Estimate spanning(double value, std::initializer_list<double> ends) {
    const auto [least, most] = std::minmax(ends);
    return {{value}, {std::min(least, value)}, {std::max(most, value)}};
}

std::optional<double> loft_launching(double launch, Delivery d, const Head& head) {
    return zero_between(-5, 75, [&](double loft) {
        d.loft = {loft};
        return strike(d, head).elevation.value - launch;
    });
}

/// Face minus path that bends the ball by that much.
std::optional<double> face_to_path(double curve, double start, Delivery d, const Head& head,
                                   const Air& air) {
    return zero_between(-most_face_to_path, most_face_to_path, [&](double open) {
        d.path = {0}, d.face = {open};
        Launch launch = strike(d, head);
        launch.start = {start};
        return fly(launch, air, coarse_step).curve.value - curve;
    });
}

} // namespace

Estimate face_from_start(unit::Degrees start, unit::Degrees path, double share) {
    const auto face = [&](double s) { return path.value + (start - path).value / s; };
    return spanning(face(share), {face(least_published_share), face(most_published_share)});
}

std::optional<FaceAndPath> face_and_path(unit::Degrees start, unit::Metres curve,
                                         const Delivery& delivery, const Head& head,
                                         const Air& air) {
    const auto open = face_to_path(curve.value, start.value, delivery, head, air);
    if (!open) return std::nullopt;
    const auto face = [&](double share, double d) { return start.value + (1 - share) * d; };
    const auto path = [&](double share, double d) { return start.value - share * d; };
    const double share = horizontal_share(delivery, head);
    const double low = *open / (1 + lift_scatter), high = *open / (1 - lift_scatter);
    const double least = least_published_share, most = most_published_share;
    return FaceAndPath{spanning(face(share, *open), {face(least, low), face(least, high),
                                                     face(most, low), face(most, high)}),
                       spanning(path(share, *open), {path(least, low), path(least, high),
                                                     path(most, low), path(most, high)})};
}

std::optional<Estimate> loft_from_launch(unit::Degrees launch, unit::Degrees attack,
                                         unit::MetresPerSecond club_speed, const Head& head) {
    const Delivery d{{}, {}, attack, {}, club_speed};
    Head rolls = head, grips = head;
    rolls.tangential -= 0.1, grips.tangential += 0.1;
    const auto value = loft_launching(launch.value, d, head);
    const auto lower = loft_launching(launch.value, d, rolls);
    const auto upper = loft_launching(launch.value, d, grips);
    if (!value || !lower || !upper) return std::nullopt;
    return spanning(*value, {*lower, *upper});
}

unit::MetresPerSecond club_speed_for(unit::MetresPerSecond ball_speed, const Delivery& delivery,
                                     const Head& head) {
    Delivery d = delivery;
    d.club_speed = ball_speed;
    for (int i = 0; i < 8; ++i) { // the ratio hardly depends on the speed: settles at once
        const double ratio = strike(d, head).speed / d.club_speed;
        d.club_speed = ball_speed / ratio;
    }
    return d.club_speed;
}

} // namespace ball
