// Several flights integrated side by side by the classic fourth-order Runge-Kutta rule.
// The arithmetic of a lane does not depend on its neighbours: one lane alone gives the same bits.
#pragma once

#include "ball/aerodynamics.hpp"
#include "ball/vector.hpp"

#include <array>
#include <cmath>
#include <cstddef>

namespace ball {

/// What acts on every lane alike.
struct Forces {
    double air_factor = 0; ///< density times area over twice the mass, 1/m
    double gravity = standard_gravity;
    double decay = spin_decay; ///< 1/m
    Vector wind;               ///< m/s
};

/// Where one flight begins; axis is a unit vector.
struct Departure {
    Vector velocity; ///< m/s
    Vector axis;
    double spin = 0; ///< rad/s
};

/// Where a ball is, how it moves and how fast it spins.
struct Motion {
    Vector place, velocity;
    double spin = 0;
    double time = 0;
};

/// `Aerodynamics` gives Coefficients for a spin parameter and an air speed in m/s.
template <std::size_t N, class Aerodynamics>
class Lanes {
  public:
    using Row = std::array<double, N>;
    enum Slot : std::size_t { x, y, z, vx, vy, vz, spin, slots };
    using State = std::array<Row, slots>;

    Lanes(const Forces& forces, const Aerodynamics& aerodynamics)
        : forces_(forces)
        , aerodynamics_(aerodynamics) {}

    void depart(std::size_t lane, const Departure& d) {
        const std::array<double, slots> at{0,     0, 0, d.velocity.x, d.velocity.y, d.velocity.z,
                                           d.spin};
        for (std::size_t slot = 0; slot < slots; ++slot)
            state_[slot][lane] = at[slot];
        axis_x_[lane] = d.axis.x, axis_y_[lane] = d.axis.y, axis_z_[lane] = d.axis.z;
    }

    /// Call once after the last `depart`.
    void begin() { derive(state_, slope_); }

    void step(double h) {
        before_ = state_, slope_before_ = slope_;
        State sum = slope_;
        advance(slope_, h / 2);
        accumulate(sum, 2);
        advance(slope_, h / 2);
        accumulate(sum, 2);
        advance(slope_, h);
        accumulate(sum, 1);
        for (std::size_t slot = 0; slot < slots; ++slot)
            for (std::size_t i = 0; i < N; ++i)
                state_[slot][i] = before_[slot][i] + sum[slot][i] * (h / 6);
        derive(state_, slope_);
        h_ = h, time_ += h;
    }

    /// True when the last step took that lane through the ground.
    bool crossed_ground(std::size_t lane) const {
        return before_[z][lane] >= 0 && state_[z][lane] < 0;
    }
    /// True when the last step took that lane over the top.
    bool crossed_top(std::size_t lane) const {
        return before_[vz][lane] > 0 && state_[vz][lane] <= 0;
    }

    /// The motion at the part u (0 to 1) of the last step, by Hermite's cubic.
    Motion inside(std::size_t lane, double u) const {
        const auto at = [&](Slot slot) { return cubic(slot, lane, u); };
        return {{at(x), at(y), at(z)}, {at(vx), at(vy), at(vz)}, at(spin), time_ - h_ + u * h_};
    }
    /// The part of the last step at which that slot passes zero, from the later side.
    double zero_of(Slot slot, std::size_t lane) const {
        double u = 1;
        for (int i = 0; i < 8; ++i)
            u -= cubic(slot, lane, u) / cubic_slope(slot, lane, u);
        return std::clamp(u, 0.0, 1.0);
    }

  private:
    /// Replaces `slope` by the slope found h along it from the start of the step.
    void advance(State& slope, double h) {
        for (std::size_t slot = 0; slot < slots; ++slot)
            for (std::size_t i = 0; i < N; ++i)
                trial_[slot][i] = before_[slot][i] + slope[slot][i] * h;
        derive(trial_, slope);
    }

    void accumulate(State& sum, double weight) const {
        for (std::size_t slot = 0; slot < slots; ++slot)
            for (std::size_t i = 0; i < N; ++i)
                sum[slot][i] += slope_[slot][i] * weight;
    }

    void derive(const State& s, State& out) {
        Row speed, across, spin_speed, drag, lift;
        for (std::size_t i = 0; i < N; ++i) {
            const Vector v = air_velocity(s, i), side = cross(axis(i), v);
            speed[i] = dot(v, v) + least, across[i] = dot(side, side) + least;
        }
        for (std::size_t i = 0; i < N; ++i)
            speed[i] = std::sqrt(speed[i]), across[i] = std::sqrt(across[i]);
        for (std::size_t i = 0; i < N; ++i) {
            const Coefficients k =
                aerodynamics_(s[spin][i] * ball_radius.value / speed[i], speed[i]);
            drag[i] = forces_.air_factor * speed[i] * k.drag;
            lift[i] = forces_.air_factor * speed[i] * k.lift * (speed[i] / across[i]);
            spin_speed[i] = -forces_.decay * speed[i] * s[spin][i];
        }
        for (std::size_t i = 0; i < N; ++i) {
            const Vector v = air_velocity(s, i), side = cross(axis(i), v);
            across[i] = lift[i] * side.x - drag[i] * v.x;
            speed[i] = lift[i] * side.y - drag[i] * v.y;
            lift[i] = lift[i] * side.z - drag[i] * v.z - forces_.gravity;
        }
        out[x] = s[vx], out[y] = s[vy], out[z] = s[vz];
        out[vx] = across, out[vy] = speed, out[vz] = lift, out[spin] = spin_speed;
    }

    Vector air_velocity(const State& s, std::size_t i) const {
        return Vector{s[vx][i], s[vy][i], s[vz][i]} - forces_.wind;
    }
    Vector axis(std::size_t i) const { return {axis_x_[i], axis_y_[i], axis_z_[i]}; }

    double cubic(Slot slot, std::size_t lane, double u) const {
        const double a = before_[slot][lane], b = state_[slot][lane];
        const double p = slope_before_[slot][lane] * h_, q = slope_[slot][lane] * h_;
        return a + u * (p + u * (3 * (b - a) - 2 * p - q + u * (p + q - 2 * (b - a))));
    }
    double cubic_slope(Slot slot, std::size_t lane, double u) const {
        const double d = state_[slot][lane] - before_[slot][lane];
        const double p = slope_before_[slot][lane] * h_, q = slope_[slot][lane] * h_;
        return p + u * (2 * (3 * d - 2 * p - q) + 3 * u * (p + q - 2 * d));
    }

    static constexpr double least = 1e-18; // m^2/s^2, keeps a ball at rest from dividing by zero

    Forces forces_;
    Aerodynamics aerodynamics_;
    State state_{}, before_{}, slope_{}, slope_before_{}, trial_{};
    Row axis_x_{}, axis_y_{}, axis_z_{};
    double h_ = 0, time_ = 0;
};

} // namespace ball
