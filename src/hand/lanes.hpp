// Four numbers worked on at once: neighbouring rays of a picture, neighbouring points of a surface.
// Every step is one IEEE operation a lane, so that the result does not depend on the machine.
#pragma once

namespace hand {

using Lanes = float __attribute__((vector_size(16)));
using Picked = int __attribute__((vector_size(16))); ///< all bits set where true
inline constexpr int lanes = 4;

inline Lanes all(float v) { return Lanes{v, v, v, v}; }
inline Picked all(int v) { return Picked{v, v, v, v}; }
inline Lanes least(Lanes a, Lanes b) { return a < b ? a : b; }
inline Lanes most(Lanes a, Lanes b) { return a > b ? a : b; }
inline Lanes within(Lanes v, float low, float high) { return least(most(v, all(low)), all(high)); }
inline Lanes distance_between(Lanes a, Lanes b) { return most(a - b, b - a); }
inline bool any(Picked m) { return (m[0] | m[1] | m[2] | m[3]) != 0; }

inline Lanes root(Lanes v) {
    Lanes out;
    for (int i = 0; i < lanes; ++i)
        out[i] = __builtin_sqrtf(v[i]);
    return out;
}

} // namespace hand
