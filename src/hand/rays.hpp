// Rays of the picture, four at a time: parallel, from the eye down into the picture.
#pragma once

#include "hand/field.hpp"
#include "hand/lanes.hpp"

namespace hand {

/// What four rays meet. Where `slot` is negative the ray meets nothing.
struct Hits {
    Picked slot = all(-1); ///< surface slot as in Solid, rod_slot for the handle
    Lanes z{}, nx{}, ny{}, nz{};
};
inline constexpr int rod_slot = 12;

/// A solid of one tile with what does not depend on the ray.
struct Culled {
    Solid solid;
    float radius;        ///< the larger end
    float inverse_plane; ///< 1 / squared length in the picture plane
    float lean;          ///< how far along the axis the highest point leans, per millimetre
    explicit Culled(const Solid& s);
};

class Rays {
  public:
    /// `solids` sorted by slot; `rod` may be null.
    Hits cast(std::span<const Culled> solids, const Rod* rod, Lanes x, Lanes y);

  private:
    /// A solid as these four rays see it: the ray's place across it, then its own numbers.
    struct Wide {
        Lanes px, py, along;
        Lanes az, bx, by, bz, inverse, ra, slope, melt, inverse_melt, quarter;
        int slot;
    };
    struct Way {
        Lanes start, end;
    };
    struct Nearest {
        Lanes distance;
        Picked slot;
    };

    Way gather(std::span<const Culled> solids, const Rod* rod, Lanes x, Lanes y);
    Nearest near(Lanes x, Lanes y, Lanes z) const;
    Lanes rod_distance(Lanes x, Lanes y, Lanes z) const;
    void add_normals(Hits& hits) const;
    void add_rod_normals(Hits& hits, Lanes x, Lanes y) const;

    std::vector<Wide> wide_;
    const Rod* rod_ = nullptr;
};

} // namespace hand
