// A solved wish: the parameters, and each hand the views need.
#pragma once

#include "hand/reading.hpp"

#include <memory>
#include <mutex>
#include <optional>

namespace hand {

struct BothHands {
    Limbs lead, trail;
};

class Pose {
  public:
    explicit Pose(const Wish& wish);

    const Wish& wish() const { return wish_; }
    const Hold& hold() const { return hold_; } ///< of the closed lead hand
    const Limbs& lead() const { return lead_; }
    bool has_contradiction() const { return !contradiction_.empty(); }
    const std::string& contradiction() const { return contradiction_; }
    /// Where the V that was seen points, degrees as `v_degrees`: the hand's own direction, or the
    /// recorded one when that is next to it. Nothing when nobody looked.
    std::optional<double> v_seen() const;
    const Balance& balance() const { return balance_; }
    const Limbs& one_finger() const { return one_finger_; }

    Limbs open_palm() const;
    Limbs first_half() const; ///< of closing: the fingers, or, when the pad came first, that
    bool has_fingers_first() const;
    Limbs with_thumb(double reach) const;
    /// With the hand further down the handle, clear of the lead hand, joined as recorded. Solved
    /// once for all views of this pose, by whichever thread asks first.
    const BothHands& both_hands() const;

  private:
    void find_contradiction();
    BothHands joined() const;

    Wish wish_;
    Anatomy body_;
    Hold hold_;
    Limbs lead_, one_finger_;
    Balance balance_;
    std::string contradiction_;

    struct Shared {
        std::once_flag once;
        BothHands hands;
    };
    std::shared_ptr<Shared> both_ = std::make_shared<Shared>(); ///< copies hold alike
};

/// Turn at which that many knuckles show (halves: the next one just shows), 0 to 4.
double turn_for_knuckles(const Anatomy& body, Hold hold, double knuckles);
/// Turn at which the V points there.
double turn_for_v(const Anatomy& body, Hold hold, double degrees);

} // namespace hand
