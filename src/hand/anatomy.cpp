#include "hand/anatomy.hpp"

namespace hand {
namespace {

// Segment lengths follow the ratios to hand length of Buchholz, Armstrong & Goldstein (1992);
// radii, knuckle caps and the closing of the palm are ours, tuned by eye on the drawing.
constexpr std::array<Ray, fingers> table{{
    {{13, 16, 0},
     {28.5, 90, 0},
     {46, 27, 21},
     {10.6, 9.2, 8.2, 6.7},
     5,
     12.2,
     9.0,
     3.4,
     18,
     {0, 0, -1}},
    {{4, 15, 1},
     {7.5, 93, 2.5},
     {50, 31, 22.5},
     {10.6, 9.3, 8.4, 6.9},
     1,
     12.2,
     9.2,
     3.8,
     2,
     {0, 0, 0}},
    {{-5, 14, 0},
     {-13, 87.5, 1},
     {46, 30, 22.5},
     {10.0, 8.9, 7.9, 6.5},
     -3,
     11.6,
     8.6,
     3.4,
     -7,
     {0, 0, -7.5}},
    {{-13, 13, -2},
     {-32, 79, -3},
     {37.5, 22, 20},
     {8.8, 7.8, 7.0, 5.8},
     -8,
     10.8,
     7.8,
     3.0,
     -16,
     {2.5, -1.5, -17}},
}};
constexpr std::array<double, 3> thumb_table{47, 36, 30};
constexpr std::array<double, 4> thumb_radii{13.2, 11.4, 10.2, 8.4};

/// Hand length and breadth, and the handle: diameter 50.8 mm (2 in) below the cap.
struct Size {
    double length, breadth, handle;
};

// Large and small: means of men and women in ANSUR II (2012). Child: about ten years, from memory.
// Handles: .900 in and .850 in, and a junior's 0.78 in (common practice, no source).
constexpr Size size_of(Build build) {
    switch (build) {
    case Build::large:
        return {193.28, 88.26, 22.86};
    case Build::small:
        return {181.08, 78.15, 21.59};
    case Build::child:
        return {152.0, 67.0, 19.8};
    }
    return {193.28, 88.26, 22.86};
}

constexpr double gauge_station = 50.8; ///< where a handle is measured, millimetres below its cap
constexpr double taper = 0.0150; ///< of the radius, per millimetre: 15 mm across at the far end

double table_breadth(const std::array<Ray, fingers>& ray) {
    const Ray &first = ray[index_finger], &last = ray[little_finger];
    return first.knuckle.x + first.head - last.knuckle.x + last.head;
}

double table_length(const std::array<Ray, fingers>& ray) {
    const Ray& m = ray[middle_finger];
    return m.knuckle.y + m.phalanx[0] + m.phalanx[1] + m.phalanx[2];
}

} // namespace

double Anatomy::hand_length() const { return table_length(ray); }
double Anatomy::hand_breadth() const { return table_breadth(ray); }

Anatomy anatomy(Build build) {
    const Size size = size_of(build);
    Anatomy a{table, {20, 17, -9}, thumb_table, thumb_radii, 1, 1, 0, taper};
    a.across = size.breadth / a.hand_breadth();
    a.along = size.length / a.hand_length();
    for (Ray& r : a.ray) {
        r.base = a.at(r.base.x, r.base.y, r.base.z);
        r.knuckle = a.at(r.knuckle.x, r.knuckle.y, r.knuckle.z);
        r.cup = a.at(r.cup.x, r.cup.y, r.cup.z);
        for (double& l : r.phalanx)
            l *= a.along;
        for (double& w : r.radius)
            w *= a.across;
        r.head *= a.across;
        r.cap *= a.across;
        r.cap_lift *= a.across;
    }
    a.saddle = a.at(a.saddle.x, a.saddle.y, a.saddle.z);
    for (double& l : a.thumb)
        l *= a.along;
    for (double& w : a.thumb_radius)
        w *= a.across;
    a.handle_radius = size.handle / 2 + gauge_station * taper;
    return a;
}

double handle_diameter(Build build) { return 2 * anatomy(build).handle_radius; }

} // namespace hand
