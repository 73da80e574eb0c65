#include "shots/table.hpp"

#include <algorithm>

namespace shots {

std::vector<std::string> clubs_compared(const Table& table) {
    std::vector<std::string> clubs;
    for (const Shot& shot : table.shots)
        if (!shot.club.empty() && (shot.block == Block::before || shot.block == Block::after) &&
            std::ranges::find(clubs, shot.club) == clubs.end())
            clubs.push_back(shot.club);
    return clubs;
}

} // namespace shots
