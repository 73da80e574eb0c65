#include "hand/flesh.hpp"

namespace hand {
namespace {

class Builder {
  public:
    explicit Builder(const Limbs& limbs)
        : l_(limbs)
        , b_(limbs.body) {}

    std::vector<Capsule> build() {
        palm();
        wrist();
        knuckles();
        thumb_root();
        for (int f = 0; f < fingers; ++f)
            finger(f);
        thumb();
        return std::move(out_);
    }

  private:
    void add(Vec a, Vec b, double ra, double rb, double melt, int surface = palm_side,
             bool deep = false) {
        out_.push_back({a, b, b_.wide(ra), b_.wide(rb), b_.wide(melt), surface, deep});
    }
    /// Radii already in size.
    void add_sized(Vec a, Vec b, double ra, double rb, double melt, int surface) {
        out_.push_back({a, b, ra, rb, b_.wide(melt), surface, false});
    }

    void palm() {
        for (int f = 0; f < fingers; ++f) {
            const Ray& r = b_.ray[f];
            add(r.base, l_.knuckle[f] + b_.at(0, -1, -1.2), 13.0, r.head / b_.across, 9, palm_side,
                true);
        }
        add(b_.at(-15, 14, -10), b_.at(-31, 60, -13), 14.5, 11.5, 8, palm_side, true);
        add(b_.at(-22, 24, -12), b_.at(-28, 44, -12), 11.5, 11, 8, palm_side, true);
        add(b_.at(10, 30, -7), b_.at(8, 76, -6), 11, 11, 9, palm_side, true);
        const Vec cmc = l_.thumb[0], tm = l_.thumb[1];
        add(b_.at(12, 16, -8), lerp(cmc, tm, .78) + b_.at(0, 0, -1.5), 13.5, 12.5, 8, palm_side,
            true);
        add(b_.at(9, 24, -10),
            lerp(lerp(cmc, tm, .6), l_.knuckle[index_finger], .30) + b_.at(0, 0, -5), 12.5, 10, 8,
            palm_side, true);
    }

    /// Three capsules side by side: an oval section.
    void wrist() {
        const auto across = [](Vec d) { return unit_vector(cross(d, cross(ex, d))); };
        const Vec end = l_.wrist + l_.arm * 150;
        for (const double g : {1.0, -1.0}) {
            add(b_.at(13.5 * g, 10, -2), l_.wrist + across(l_.carpus) * b_.wide(15 * g), 15.0, 15.0,
                8, palm_side, true);
            add(l_.wrist + across(l_.arm) * b_.wide(15 * g), end + across(l_.arm) * b_.wide(19 * g),
                15.0, 21.0, 8, palm_side, true);
        }
        add(b_.at(0, 10, -1), l_.wrist, 14.5, 15.6, 8, palm_side, true);
        add(l_.wrist, end, 15.6, 22.5, 8, palm_side, true);
    }

    void knuckles() {
        for (int f = 0; f < fingers; ++f) {
            const Ray& r = b_.ray[f];
            const Vec c = l_.knuckle[f] + Vec{0, 0, r.cap_lift};
            add_sized(c, c + b_.at(0, -3, -.3), r.cap, r.cap - b_.wide(1.1), 5, palm_side);
        }
        // The little finger's edge of the hand runs into the wrist without a notch.
        add(b_.at(-15, 6, -4),
            lerp(b_.ray[little_finger].base, l_.knuckle[little_finger], .75) + b_.at(-2, 0, -2),
            13.5, 11.5, 9);
        const Vec out = -unit_vector(cross(l_.arm, cross(ex, l_.arm)));
        struct Bridge {
            Finger to;
            double beyond, aside, share, lift, arm, hand;
        };
        for (const Bridge& w : {Bridge{little_finger, 46, 8, .93, .5, 13.5, 10.4},
                                Bridge{ring_finger, 54, 6, .95, 1.5, 15, 10.5},
                                Bridge{middle_finger, 46, 3, .86, 2, 16, 10.5}}) {
            add(l_.wrist + l_.arm * (b_.along * w.beyond) + out * b_.wide(w.aside),
                lerp(b_.ray[w.to].base, l_.knuckle[w.to], w.share) + b_.at(-1, 0, w.lift), w.arm,
                w.hand, 9);
        }
        // Skin and fat between the heads: valleys, not clefts.
        for (int f = 0; f + 1 < fingers; ++f) {
            const Vec back = b_.at(0, -3.5, 1.5);
            add(l_.knuckle[f] + back, l_.knuckle[f + 1] + back, b_.ray[f].head / b_.across - 1.6,
                b_.ray[f + 1].head / b_.across - 1.6, 8);
        }
    }

    void thumb_root() {
        const Vec cmc = l_.thumb[0], tm = l_.thumb[1];
        const Ray& index = b_.ray[index_finger];
        const Vec knuckle = l_.knuckle[index_finger];
        const auto& r = b_.thumb_radius;
        add_sized(cmc, tm, r[0], r[1], 8, palm_side);
        const Vec a = lerp(cmc, tm, .80), b = lerp(index.base, knuckle, .78);
        add(lerp(a, b, .15), lerp(a, b, .95) + b_.at(0, 0, -3), 7.5, 7.5, 9);
        add(lerp(cmc, tm, .55), lerp(index.base, knuckle, .55) + b_.at(0, 0, -2), 9, 9, 9);
        // An open hand has a soft web; on the handle thumb and hand meet in a crease.
        add_sized(tm, l_.thumb[2], r[1], r[2], 7 - 5 * l_.hold.closure, palm_side);
    }

    void finger(int f) {
        const Ray& r = b_.ray[f];
        const PosedFinger& p = l_.finger[f];
        const int surface = first_finger + f;
        add_sized(p.joint[0], lerp(p.joint[0], p.joint[1], .5), r.radius[0],
                  mix(r.radius[0], r.radius[1], .5), 7, palm_side);
        add_sized(p.joint[0], p.joint[1], r.radius[0], r.radius[1], 2.5, surface);
        add_sized(p.joint[1], p.joint[2], r.radius[1], r.radius[2], 2.5, surface);
        add_sized(p.joint[2], p.joint[3], r.radius[2], r.radius[3], 2.0, surface);
    }

    void thumb() {
        const auto& t = l_.thumb;
        const auto& r = b_.thumb_radius;
        add_sized(t[0], t[1], r[0], r[1], 5, thumb_side);
        add_sized(t[1], t[2], r[1], r[2], 5, thumb_side);
        add_sized(t[2], t[3], r[2], r[3], 3.5, thumb_side);
    }

    const Limbs& l_;
    const Anatomy& b_;
    std::vector<Capsule> out_;
};

} // namespace

std::vector<Capsule> flesh(const Limbs& limbs) { return Builder(limbs).build(); }

} // namespace hand
