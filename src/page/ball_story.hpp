// What the ball did and why, as the pages and the numbers tell it: plain results, nothing drawn.
#pragma once

#include "ball/credit.hpp"
#include "ball/effective_loft.hpp"
#include "ball/estimate.hpp"
#include "ball/flight.hpp"
#include "ball/next_step.hpp"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace page {

/// A flight with its line as it is drawn: led through the measured carry, offline and height where
/// the table has them.
struct DrawnFlight {
    ball::Flight model;
    std::vector<ball::Place> line;
    bool landing_measured = false; ///< the table has the carry
};

/// The middle shot of one block. Medians of the counted shots; a column counts when at least half
/// of them have it.
struct BallBlock {
    std::size_t shots = 0;
    ball::Shot middle;
    std::optional<unit::Degrees> start; ///< measured, else from face and path with the face share
    bool start_estimated = false;
    std::optional<ball::Estimate> start_range;   ///< of an estimate, over the published shares
    std::optional<ball::Estimate> face_estimate; ///< when the table has no face
    std::optional<ball::Estimate> path_estimate; ///< when the table has no path
    ball::EffectiveLoft loft;
    std::optional<unit::Degrees> club_loft; ///< to compare with the lofts of clubs: lean added back
    std::optional<ball::PlaysLike> plays_like; ///< indices into the bag
    std::optional<ball::Delivery> delivery;    ///< of the middle shot, where the model has enough
    std::optional<DrawnFlight> typical;
    std::vector<DrawnFlight> flights; ///< of the counted shots, in their order
};

/// Where the share of the face in the start direction comes from.
enum class ShareSource : std::uint8_t { published, geometry, fitted, given };

/// One club as it is named: the words as recorded, or the key of a typical club.
struct NamedClub {
    std::string name;
    bool typical = false; ///< `name` is a key: its printed name is the sentence club.<name>
};

struct BallStory {
    std::optional<ball::Club> club; ///< in hand; loft and lie known or from the typical club
    bool usual_club = false;        ///< its loft is common practice, not recorded
    std::vector<ball::Club> bag;    ///< empty when the club in hand has no loft
    std::vector<NamedClub> names;   ///< of the bag
    bool usual_bag = false;
    std::size_t in_hand = 0; ///< index into the bag
    ball::Head head;
    ball::Air air;
    std::optional<unit::Degrees> lean; ///< of a square strike, from the block it was read from
    BallBlock before, after, cold;
    std::optional<ball::Credit> credit;
    std::optional<ball::Remaining> next;
    double face_share = 0;
    ShareSource share_source = ShareSource::published;
    std::string share_from;                 ///< the source that was given with a share
    std::optional<double> curve_per_degree; ///< metres for a degree of face to path
};

} // namespace page
