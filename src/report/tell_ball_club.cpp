#include "report/tell_ball_club.hpp"

#include <algorithm>
#include <cmath>

namespace report {

namespace {

/// Lower case, '-' and '_' as spaces: how names are compared. Letters beyond ASCII stay.
std::string plain(std::string_view name) {
    std::string out;
    for (const char c : name) {
        if (c == '-' || c == '_')
            out += ' ';
        else
            out += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return out;
}

const drills::TypicalClub* named(std::span<const drills::TypicalClub> clubs,
                                 const std::string& name, const words::Speaker* speaker) {
    const std::string wanted = plain(name);
    for (const auto& club : clubs) {
        if (plain(club.key) == wanted) return &club;
        const std::string key = "club." + club.key;
        if (speaker && speaker->has(key) && plain(speaker->say(key)) == wanted) return &club;
    }
    return nullptr;
}

/// Lie of the typical club with the nearest loft; 62 degrees without a typical bag.
unit::Degrees usual_lie(std::span<const drills::TypicalClub> clubs, unit::Degrees loft) {
    const auto nearest = std::ranges::min_element(
        clubs, {}, [&](const auto& c) { return std::abs((c.loft - loft).value); });
    return nearest == clubs.end() ? unit::Degrees{62} : nearest->lie;
}

void take_own_bag(page::BallStory& ball, const record::Lesson& lesson,
                  std::span<const drills::TypicalClub> clubs) {
    for (const auto& club : lesson.bag) {
        if (!club.loft) continue;
        const auto lie = club.lie ? *club.lie : usual_lie(clubs, *club.loft);
        ball.bag.push_back({club.name, *club.loft, lie});
        ball.names.push_back({club.name, false});
    }
}

/// The club in hand stands in the bag at its own loft.
void put_in_hand(page::BallStory& ball, const std::string& name, const std::string& typical_key) {
    auto own = std::ranges::find_if(ball.bag, [&](const ball::Club& c) {
        return plain(c.key) == plain(name) || (!typical_key.empty() && c.key == typical_key);
    });
    if (own == ball.bag.end()) // under another name
        own = std::ranges::find(ball.bag, ball.club->loft, &ball::Club::loft);
    ball.in_hand = static_cast<std::size_t>(own - ball.bag.begin());
    if (own != ball.bag.end()) {
        own->loft = ball.club->loft;
        return;
    }
    ball.bag.push_back(*ball.club);
    ball.names.push_back({name, false});
}

} // namespace

void choose_club(page::BallStory& ball, const record::Lesson& lesson,
                 std::span<const drills::TypicalClub> clubs, const words::Speaker* speaker) {
    const auto* typical = named(clubs, lesson.club.name, speaker);
    if (lesson.club.loft) {
        const auto loft = *lesson.club.loft;
        ball.club = {lesson.club.name, loft,
                     lesson.club.lie ? *lesson.club.lie : usual_lie(clubs, loft)};
    } else if (typical) {
        ball.club = {lesson.club.name, typical->loft,
                     lesson.club.lie ? *lesson.club.lie : typical->lie};
        ball.usual_club = true;
    } else {
        return;
    }
    ball.head.mass = ball::common_head_mass(ball.club->loft);
    if (lesson.club.face_share)
        ball.head.face_share = {*lesson.club.face_share, lesson.club.share_from};
    take_own_bag(ball, lesson, clubs);
    if (ball.bag.size() < 2) {
        ball.bag.clear();
        ball.names.clear();
        ball.usual_bag = true;
        for (const auto& club : clubs) {
            ball.bag.push_back({club.key, club.loft, club.lie});
            ball.names.push_back({club.key, true});
        }
    }
    put_in_hand(ball, lesson.club.name, typical ? typical->key : std::string());
}

} // namespace report
