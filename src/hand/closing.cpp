#include "hand/closing.hpp"

#include <optional>

namespace hand {
namespace {

constexpr double squash = 0.8;
constexpr std::array<double, 3> limit{88, 108, 84}, start{-14, 2, 2};
constexpr double free_knuckle = 76; ///< flexion of a knuckle whose phalanx meets nothing

double clear_along(const Clearance& clear, Vec a, Vec b, double ra, double rb, double from) {
    constexpr int samples = 12;
    double best = 1e9;
    for (int i = 0; i <= samples; ++i) {
        const double t = from + (1 - from) * i / samples;
        best = std::min(best, clear(lerp(a, b, t), mix(ra, rb, t)));
    }
    return best;
}

/// Free space when joint `j` is bent by `angle`. The middle joint also minds the still straight end
/// phalanx: it would otherwise drive the finger's end through the handle.
double free_space(const Ray& ray, const Curl& curl, const Clearance& clear,
                  std::array<double, 3> angle, int j) {
    constexpr std::array<double, 3> from{.35, .25, .45};
    const PosedFinger f = bent(ray, curl, angle);
    const auto at = [&](int k, double t0) {
        return clear_along(clear, f.joint[k], f.joint[k + 1], ray.radius[k], ray.radius[k + 1], t0);
    };
    return j == 1 ? std::min(at(1, from[1]), at(2, .2)) : at(j, from[j]);
}

/// How many whole degrees joint `j` may bend on before anything that now has `free` millimetres
/// can be `squash` deep: no point moves faster than the farthest one from the joint.
double harmless(const Ray& ray, int j, double free) {
    const double reach = j == 1 ? ray.phalanx[1] + ray.phalanx[2] : ray.phalanx[j];
    return std::max(1.0, std::floor((free + squash) / (1.05 * reach * in_radians(1))));
}

} // namespace

PosedFinger bent(const Ray& ray, const Curl& curl, std::array<double, 3> angle) {
    PosedFinger f{};
    f.axis = curl.axis;
    f.angle = angle;
    f.joint[0] = curl.knuckle;
    double sum = 0;
    for (int j = 0; j < 3; ++j) {
        sum += angle[j];
        // The last capsule ends one radius short of the tip.
        const double l = ray.phalanx[j] - (j == 2 ? ray.radius[3] : 0);
        f.bone[j] = rotated(curl.out, curl.axis, -sum);
        f.joint[j + 1] = f.joint[j] + f.bone[j] * l;
    }
    return f;
}

std::array<double, 3> close_finger(const Ray& ray, const Curl& curl, const Clearance& clear) {
    std::array<double, 3> angle{start};
    for (int j = 0; j < 3; ++j) {
        const auto free_at = [&](double t) {
            angle[j] = t;
            return free_space(ray, curl, clear, angle, j);
        };
        std::optional<double> found;
        for (double t = start[j]; t <= limit[j];) {
            const double c = free_at(t);
            if (c < -squash) {
                found = t;
                if (t > start[j]) {
                    const double before = free_at(t - 1);
                    found = t - 1 + (before + squash) / (before - c);
                }
                break;
            }
            t += harmless(ray, j, c);
        }
        angle[j] = found ? *found : j == 0 ? free_knuckle : limit[j];
    }
    return angle;
}

} // namespace hand
