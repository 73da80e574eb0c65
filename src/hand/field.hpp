// Signed distance to one or two hands and the handle, camera coordinates (x right, y up, z to the
// eye).
#pragma once

#include "hand/flesh.hpp"
#include "hand/lanes.hpp"

#include <optional>
#include <span>
#include <vector>

namespace hand {

/// Orthographic: where the picture's right, up and the eye are, in the grip frame.
struct Camera {
    Rows rows;
    static Camera looking(Vec eye, Vec up);
    Vec operator*(Vec grip) const { return rows * grip; }
};

/// Nearest surface at a point.
struct Near {
    float distance = 1e9f;
    int surface = -1; ///< Surface, + second_hand for the other hand
};

/// A capsule ready to be measured.
struct Solid {
    float ax, ay, az, bx, by, bz, inverse, ra, slope, melt;
    int slot; ///< surface slot: 0..5 the first hand, 6..11 the second
    float clear_of(float x, float y, float z) const;
};

/// The handle in camera coordinates, its rim rounded.
struct Rod {
    float ox, oy, oz, dx, dy, dz, radius, taper, length;
    float distance(float x, float y, float z) const;
};

inline constexpr int hand_slots = 6;
/// A finger wins over the palm it melts into.
inline float slot_bias(int slot) { return slot % hand_slots ? 0.02f : 0; }

/// What is to be measured: all solids, or those a tile of the picture can meet.
struct Scene {
    std::span<const Solid> solids; ///< sorted by slot
    const Rod* rod = nullptr;

    Near near(float x, float y, float z) const;
    float distance(float x, float y, float z) const { return near(x, y, z).distance; }
    /// Of four points at once, the rod left out.
    Lanes flesh_distance(Lanes x, Lanes y, Lanes z) const;
    /// Outward normal of the nearest surface, unit length.
    Vec normal(Vec p) const;
};

class Field {
  public:
    enum class Parts { all, flesh, deep }; ///< with the handle, without, the palm alone

    Field(std::span<const Limbs* const> hands, const Camera& camera, Parts parts = Parts::all);

    Scene scene() const { return {solids_, rod_ ? &*rod_ : nullptr}; }
    double distance(Vec p) const { return scene().distance(float(p.x), float(p.y), float(p.z)); }
    const Camera& camera() const { return camera_; }

  private:
    std::vector<Solid> solids_;
    std::optional<Rod> rod_;
    Camera camera_;
};

} // namespace hand
