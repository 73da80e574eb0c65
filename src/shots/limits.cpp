#include "shots/limits.hpp"

#include "shots/header.hpp"
#include "unit/quantity.hpp"

#include <algorithm>
#include <array>

namespace shots {

Limits usual_limits(unit::Measure measure) {
    using unit::Measure;
    switch (measure) {
    case Measure::face:
    case Measure::path:
        return {-35, 35};
    case Measure::face_path:
        return {-50, 50};
    case Measure::loft:
        return {-5, 80};
    case Measure::attack:
        return {-20, 15};
    case Measure::club_speed:
        return {3, 90};
    case Measure::ball_speed:
        return {2, 105};
    case Measure::launch:
        return {-10, 75};
    case Measure::start:
        return {-45, 45};
    case Measure::spin:
        return {100, 15000};
    case Measure::axis:
        return {-80, 80};
    case Measure::curve:
        return {-120, 120};
    case Measure::carry:
        return {0, 360};
    case Measure::offline:
        return {-150, 150};
    case Measure::apex:
        return {0, 75};
    case Measure::landing:
        return {0, 90};
    case Measure::strike:
        return {-60, 60};
    }
    return {};
}

double fastest(std::string_view club) {
    struct Family {
        std::string_view word;
        double mph;
    };
    constexpr std::array families{Family{"driver", 150}, Family{"wood", 135},
                                  Family{"hybrid", 125}, Family{"wedge", 105},
                                  Family{"putter", 30},  Family{"iron", 118}};
    const std::string name = plain_name(club);
    const auto found = std::ranges::find_if(
        families, [&](const Family& f) { return name.find(f.word) != std::string::npos; });
    return (found == families.end() ? 150 : found->mph) * unit::mps_in_a_mph;
}

} // namespace shots
