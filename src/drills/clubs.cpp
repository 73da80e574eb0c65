#include "drills/clubs.hpp"

#include "yaml/field.hpp"

#include <algorithm>

namespace drills {

namespace {

TypicalClub read_club(const yaml::Field& field) {
    field.only({"club", "loft", "lie", "head grams"});
    TypicalClub club;
    club.span = field.span();
    club.key = field.required("club", "seven-iron").text().value_or("");
    club.loft.value = field.required("loft", "31").number(5, 70).value_or(0);
    club.lie.value = field.required("lie", "62").number(50, 75).value_or(0);
    club.head.value = field.required("head grams", "270").number(150, 400).value_or(0) / 1000;
    return club;
}

} // namespace

std::vector<TypicalClub> read_clubs(const diag::Source& source, diag::Findings& findings) {
    const yaml::Document document(source, findings);
    std::vector<TypicalClub> clubs;
    if (!document.readable()) return clubs;
    for (const auto& item : document.root().items()) {
        auto club = read_club(item);
        if (club.key.empty()) continue;
        if (std::ranges::find(clubs, club.key, &TypicalClub::key) != clubs.end()) {
            item.at("club").error("the club '" + club.key + "' is there twice",
                                  "leave one of them");
            continue;
        }
        clubs.push_back(std::move(club));
    }
    std::ranges::stable_sort(clubs, {}, [](const TypicalClub& c) { return c.loft.value; });
    return clubs;
}

} // namespace drills
