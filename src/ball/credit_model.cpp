#include "ball/credit_model.hpp"

#include "ball/estimate.hpp"
#include "ball/flight.hpp"

#include <algorithm>
#include <cmath>

namespace ball {

namespace {

constexpr double least_face_to_path = 1.5;     // degrees, filter of Wood, Henrikson & Broadie 2018
constexpr unit::MetresPerSecond any_speed{35}; // start directions hardly depend on it

/// One block as the model sees it.
struct Side {
    Delivery delivery;
    double strike = 1; ///< ball speed over that of a centred strike
};

Side side(const Medians& m, const Medians& other, const Present& present, const Setting& setting) {
    const auto angle = [&](Column c, unit::Degrees held) {
        return present[c] ? unit::Degrees{m[c]} : held;
    };
    Side s;
    s.delivery = {angle(face_column, {0}), angle(path_column, {0}),
                  angle(attack_column, setting.attack), angle(loft_column, setting.loft),
                  any_speed};
    const unit::MetresPerSecond ball{m[ball_speed_column]};
    if (present[club_speed_column]) {
        s.delivery.club_speed = {m[club_speed_column]};
        if (present[ball_speed_column] && m[club_speed_column] > 0)
            s.strike = ball / strike(s.delivery, setting.head).speed;
    } else if (present[ball_speed_column]) {
        // Both blocks' speeds are read with one impact, so that an unchanged ball speed is one.
        Delivery common = s.delivery;
        const auto middle = [&](Column c, unit::Degrees held) {
            return present[c] ? unit::Degrees{(m[c] + other[c]) / 2} : held;
        };
        common.face = middle(face_column, {0}), common.path = middle(path_column, {0});
        common.attack = middle(attack_column, setting.attack);
        common.loft = middle(loft_column, setting.loft);
        s.delivery.club_speed = club_speed_for(ball, common, setting.head);
    }
    return s;
}

Launch mixed(std::size_t coalition, const Side& before, const Side& after, const Head& head) {
    const auto from = [&](Factor f) -> const Side& {
        return coalition >> static_cast<unsigned>(f) & 1u ? after : before;
    };
    const Side& way = from(Factor::path);
    const Delivery d{from(Factor::face).delivery.face, way.delivery.path, way.delivery.attack,
                     from(Factor::loft).delivery.loft, from(Factor::speed).delivery.club_speed};
    Launch launch = strike(d, head);
    launch.speed = launch.speed * from(Factor::strike).strike;
    return launch;
}

} // namespace

std::array<bool, factor_count> factors_measured(const Present& p) {
    return {p[face_column], p[path_column] || p[attack_column], p[loft_column], has_speed(p),
            p[club_speed_column] && p[ball_speed_column]};
}

bool has_speed(const Present& p) { return p[club_speed_column] || p[ball_speed_column]; }

std::optional<double> fitted_share(const Medians& a, const Medians& b, const Present& present) {
    if (!present[face_column] || !present[path_column] || !present[start_column])
        return std::nullopt;
    double product = 0, square = 0, widest = 0;
    for (const Medians* m : {&a, &b}) {
        const double open = (*m)[face_column] - (*m)[path_column];
        product += open * ((*m)[start_column] - (*m)[path_column]);
        square += open * open;
        widest = std::max(widest, std::abs(open));
    }
    if (widest < least_face_to_path) return std::nullopt;
    return std::clamp(product / square, least_published_share, most_published_share);
}

Worths worths(const Medians& before, const Medians& after, const Present& present,
              const Setting& setting) {
    Worths w;
    const Side a = side(before, after, present, setting), b = side(after, before, present, setting);
    Head head = setting.head;
    if (head.face_share) {
        w.share_origin = ShareOrigin::given;
    } else if (const auto share = fitted_share(before, after, present)) {
        head.face_share = FaceShare{*share, {}};
        w.share_origin = ShareOrigin::fitted;
    }
    w.face_share = horizontal_share(b.delivery, head);
    std::array<Launch, lane_count> launches;
    static_assert(lane_count == coalition_count);
    for (std::size_t s = 0; s < coalition_count; ++s) {
        launches[s] = mixed(s, a, b, head);
        w.outcome[static_cast<std::size_t>(Outcome::start)][s] = launches[s].start.value;
    }
    if (!has_speed(present)) return w;
    const auto landings = land(launches, setting.air);
    for (std::size_t s = 0; s < coalition_count; ++s) {
        w.outcome[static_cast<std::size_t>(Outcome::curve)][s] = landings[s].curve.value;
        w.outcome[static_cast<std::size_t>(Outcome::carry)][s] = landings[s].carry.value;
        w.outcome[static_cast<std::size_t>(Outcome::offline)][s] = landings[s].offline.value;
    }
    return w;
}

} // namespace ball
