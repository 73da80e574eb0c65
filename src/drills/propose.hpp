// Which drills the printed rules would suggest. The coach's own choice always wins.
#pragma once

#include "unit/measure.hpp"

#include <optional>
#include <string>
#include <vector>

namespace drills {

/// What was looked at in the hold and did not meet the coach's target.
enum class HoldFault : std::uint8_t {
    lay,
    square,
    order,
    gap,
    pad,
    knuckles,
    v,
    thumb,
    balance,
    join,
};

/// The middle half of one measure.
struct Middle {
    double median = 0, lower = 0, upper = 0;
    double width() const { return upper - lower; }
};

/// What one lesson shows. Angles in degrees, right positive, counted from the middle of the wanted
/// range (from nought when the coach set none). An empty value was not measured.
struct Observed {
    unit::Hand hand = unit::Hand::right;
    bool junior = false;
    bool pain = false; ///< mentioned to the coach; never stored in a record
    bool hold_looked_at = false;
    std::vector<HoldFault> hold_faults;
    std::size_t shots = 0; ///< counted shots of the last block
    std::optional<Middle> face, path, start;
    double face_half = 0, path_half = 0, start_half = 0; ///< half of the wanted range, when set
    std::optional<double> loft_above; ///< degrees above the top of the wanted range, 0 inside it
    std::optional<Middle> carry, club_speed; ///< SI
    std::optional<double> club_speed_drift;  ///< last third minus first third, m/s
    bool speed_wanted = false;
};

struct Proposal {
    std::vector<std::string> ids;  ///< at most two
    std::string reason;            ///< key of the sentence that says why: "reason.face-off"
    std::vector<std::string> next; ///< at most three more, for the coach to look at
};

/// The first rule that fits gives `ids` and `reason`; later ones that fit fill `next`.
Proposal propose(const Observed& seen);

} // namespace drills
