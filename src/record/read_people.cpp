#include "record/parts.hpp"

#include <algorithm>

namespace record {

namespace {

constexpr std::array<std::string_view, 2> hands{"right", "left"};
constexpr std::array<std::string_view, 2> ages{"adult", "junior"};

/// A share of one's own is printed with its source, so it needs one.
void read_face_share(const yaml::Field& field, Club& club) {
    const yaml::Field share = field.at("face share");
    if (const auto percent = share.number(50, 95)) club.face_share = *percent / 100;
    take(field.at("share from"), club.share_from);
    if (club.face_share && club.share_from.empty())
        share.error("'face share' needs its source, which is printed beside it",
                    "add to 'club': share from: \"forty shots of ours, spring 2026\"");
}

/// A contradiction between the record and what is known of its student.
void check_known(const yaml::Field& field, const Start& start, const Student& student) {
    if (!start.known) return;
    const Student& known = start.lesson.student;
    const auto mismatch = [&](std::string_view key, std::string_view there, std::string_view here) {
        field.at(key).error("the " + std::string(key) + " of " + known.code + " is " +
                                std::string(there) + " in people.yaml, here " + std::string(here),
                            "correct one of the two, or leave the line out: it is known");
    };
    if (student.hand.value != known.hand.value && field.at("hand"))
        mismatch("hand", hands[known.hand.value == unit::Hand::left],
                 hands[student.hand.value == unit::Hand::left]);
    if (student.age != known.age)
        mismatch("age", ages[known.age == Age::junior], ages[student.age == Age::junior]);
    const std::string_view name = field.at("name").written();
    const bool same = name.empty() || start.first_name.empty() || name == start.first_name ||
                      name.starts_with(start.first_name + " ");
    if (!same) mismatch("name", diag::quote(start.first_name), diag::quote(name));
}

/// A student written as one word: a code, when it is known.
void read_bare_student(const yaml::Field& field, const Start& start) {
    if (start.known || start.told) return;
    const std::string word(field.written()); // a code has digits, a name has none
    const bool code = word.find_first_of("0123456789") != std::string::npos;
    field.error(code ? "'student' needs a hand beside the code"
                     : "'student' needs a hand beside the name",
                "write student: {" + std::string(code ? "code: " : "name: ") + word +
                    ", hand: right}, or hand: left");
}

} // namespace

void read_hand(const yaml::Field& field, diag::Located<unit::Hand>& hand) {
    if (field || hand.span.source == nullptr) hand.span = field.span();
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

void read_age(const yaml::Field& field, Age& age) {
    if (const auto chosen = choose<Age>(field, ages)) age = *chosen;
}

void read_student(const yaml::Field& field, const Start& start, Student& student,
                  diag::Findings& findings) {
    if (field.is_text()) return read_bare_student(field, start);
    field.only({"name", "code", "hand", "age", "says"}, refuse_private(field, findings));
    take(field.at("name"), student.name);
    take(field.at("code"), student.code);
    if (field.at("name").is_empty() && !field.at("code"))
        field.required("name", "Ruth");
    else if (field.at("code").is_empty() && !field.at("name"))
        field.required("code", "RU-04");
    else if (field.is_map() && !field.at("name") && !field.at("code"))
        field.error("'student' needs a 'name' or a 'code'",
                    "add to 'student' a line such as 'name: Ruth', or 'code: RU-04' for privacy");
    read_hand(start.known || start.told ? field.at("hand")
                                        : field.required("hand", "right', or 'hand: left"),
              student.hand);
    read_age(field.at("age"), student.age);
    take(field.at("says"), student.says);
    check_known(field, start, student);
}

void read_coach(const yaml::Field& field, const Start& start, Coach& coach) {
    if (!field.is_text()) {
        field.only({"name", "contact", "academy"});
        take(field.required("name", "Tom Harling"), coach.name);
        take(field.at("contact"), coach.contact);
        take(field.at("academy"), coach.academy);
        return;
    }
    const std::string word = yaml::plain_word(field.written());
    std::vector<const Coach*> meant;
    for (const Coach& one : start.coaches)
        if ((" " + yaml::plain_word(one.name) + " ").find(" " + word + " ") != std::string::npos)
            meant.push_back(&one);
    if (meant.size() == 1) {
        coach = *meant.front();
        return;
    }
    if (!start.coaches.empty()) coach.contact.clear(); // of another coach
    take(field, coach.name);
    std::vector<std::string_view> names;
    for (const Coach& one : start.coaches)
        names.push_back(one.name);
    if (meant.size() > 1)
        field.error("more than one coach is called " + diag::quote(field.written()),
                    "write the whole name: " + diag::either(names));
    else if (!start.coaches.empty())
        field.warning("house.yaml has no coach " + diag::quote(field.written()),
                      "its coaches are " + diag::either(names) +
                          "; for a guest write coach: {name: " + coach.name + ", contact: ...}");
}

void complete(Club& club, const std::vector<Club>& bag) {
    const auto own = std::ranges::find(bag, yaml::plain_word(club.name),
                                       [](const Club& one) { return yaml::plain_word(one.name); });
    if (own == bag.end()) return;
    if (!club.loft) club.loft = own->loft;
    if (!club.lie) club.lie = own->lie;
    if (club.face_share) return;
    club.face_share = own->face_share;
    club.share_from = own->share_from;
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
    bag.clear();
    for (const yaml::Field& item : field.items())
        read_club(item, bag.emplace_back());
}

} // namespace record
