#include "record/parts.hpp"

namespace record {

namespace {

constexpr std::array<std::string_view, 2> hands{"right", "left"};
constexpr std::array<std::string_view, 2> ages{"adult", "junior"};

/// The hand, with the way out for the words a coach may use instead.
void read_hand(const yaml::Field& field, diag::Located<unit::Hand>& hand) {
    hand.span = field.span();
    const std::string word = yaml::plain_word(field.written());
    for (const std::string_view side : hands)
        if (word == std::string(side) + " handed" || word == std::string(side) + " hander" ||
            word == std::string(side) + " hand" || word == side.substr(0, 1))
            return field.must("be right or left", "write hand: " + std::string(side));
    if (word == "lead" || word == "trail")
        return field.must("be right or left",
                          "lead and trail depend on the player: write the side they play from");
    if (const auto chosen = choose<unit::Hand>(field, hands)) hand.value = *chosen;
}

/// A share of one's own is printed with its source, so it needs one.
void read_face_share(const yaml::Field& field, Club& club) {
    const yaml::Field share = field.at("face share");
    if (const auto percent = share.number(50, 95)) club.face_share = *percent / 100;
    take(field.at("share from"), club.share_from);
    if (club.face_share && club.share_from.empty())
        share.error("'face share' needs its source, which is printed beside it",
                    "add to 'club': share from: \"forty shots of ours, spring 2026\"");
}

} // namespace

void read_student(const yaml::Field& field, Student& student) {
    if (field.is_text())
        return field.error("'student' needs a hand beside the name",
                           "write student: {name: " + std::string(field.written()) +
                               ", hand: right}");
    field.only({"name", "code", "hand", "age", "says"});
    take(field.at("name"), student.name);
    take(field.at("code"), student.code);
    if (field.is_map() && !field.at("name") && !field.at("code"))
        field.error("'student' needs a 'name' or a 'code'",
                    "add to 'student' a line such as 'name: Ruth', or 'code: RU-04' for privacy");
    read_hand(field.required("hand", "right"), student.hand);
    if (const auto age = choose<Age>(field.at("age"), ages)) student.age = *age;
    take(field.at("says"), student.says);
}

void read_coach(const yaml::Field& field, Coach& coach) {
    if (field.is_text()) return take(field, coach.name);
    field.only({"name", "contact", "academy"});
    take(field.required("name", "Tom Harling"), coach.name);
    take(field.at("contact"), coach.contact);
    take(field.at("academy"), coach.academy);
}

void read_club(const yaml::Field& field, Club& club) {
    club.span = field.span();
    if (field.is_text()) return take(field, club.name);
    field.only({"name", "loft", "lie", "face share", "share from"});
    take(field.required("name", "seven iron"), club.name);
    if (const auto loft = field.at("loft").number(0, 75)) club.loft = unit::Degrees{*loft};
    if (const auto lie = field.at("lie").number(45, 80)) club.lie = unit::Degrees{*lie};
    read_face_share(field, club);
}

void read_bag(const yaml::Field& field, std::vector<Club>& bag) {
    for (const yaml::Field& item : field.items())
        read_club(item, bag.emplace_back());
}

} // namespace record
