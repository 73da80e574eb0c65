#include "record/parts.hpp"

#include <cmath>

namespace record {

namespace {

constexpr std::array<std::string_view, 3> lays{"fingers", "between", "palm"};
constexpr std::array<std::string_view, 5> v_points{"lead side", "chin", "trail eye",
                                                   "trail shoulder", "outside trail shoulder"};
constexpr std::array<std::string_view, 3> thumb_sides{"lead side", "centre", "trail side"};
constexpr std::array<std::string_view, 3> thumb_lengths{"short", "middle", "long"};
constexpr std::array<std::string_view, 2> heel_pads{"on top", "beside"};
constexpr std::array<std::string_view, 2> balances{"stays", "falls"};
constexpr std::array<std::string_view, 3> joins{"overlap", "interlock", "ten finger"};
constexpr std::array<std::string_view, 8> views{"open palm",    "golfer's eye",  "butt end",
                                                "balance",      "fingers first", "joined",
                                                "joined front", "thumb"};

/// One observation; an absent field when it was not looked at.
yaml::Field seen(const yaml::Field& grip, std::string_view key) {
    const yaml::Field field = grip.at(key);
    return yaml::plain_word(field.written()) == "not looked at" ? yaml::Field() : field;
}

template <class E, std::size_t n>
void observe(const yaml::Field& field, const std::array<std::string_view, n>& words,
             std::optional<E>& to) {
    if (const auto word = choose<E>(field, words)) to = word;
}

/// "left" and "right" mean different things for different players, so a hold never says them.
bool says_left_or_right(const yaml::Field& field) {
    const std::string word = yaml::plain_word(field.written());
    if (word.find("left") == std::string::npos && word.find("right") == std::string::npos)
        return false;
    field.error(field.called() + " of a hold is said with lead and trail, found " +
                    diag::quote(field.written()),
                "a right-hander's lead side is the left; a left-hander's is the right");
    return true;
}

void read_knuckles(const yaml::Field& field, std::optional<double>& knuckles) {
    const auto count = field.number(0, 4);
    if (!count) return;
    if (std::floor(*count * 2) == *count * 2)
        knuckles = count;
    else
        field.must("be a whole or a half number", "for example 2 or 2.5");
}

void read_grip(const yaml::Field& field, unit::Grip& grip, bool& has, diag::Span& span) {
    if (!field) return;
    field.only({"lay", "knuckles", "V", "thumb side", "thumb length", "heel pad", "gap", "balance",
                "join", "square", "fingers first"});
    span = field.key_span();
    observe(seen(field, "lay"), lays, grip.lay);
    read_knuckles(seen(field, "knuckles"), grip.knuckles);
    if (const auto v = seen(field, "V"); !says_left_or_right(v)) observe(v, v_points, grip.v);
    if (const auto side = seen(field, "thumb side"); !says_left_or_right(side))
        observe(side, thumb_sides, grip.thumb_side);
    observe(seen(field, "thumb length"), thumb_lengths, grip.thumb_length);
    observe(seen(field, "heel pad"), heel_pads, grip.heel_pad);
    take(seen(field, "gap"), grip.gap);
    observe(seen(field, "balance"), balances, grip.balance);
    observe(seen(field, "join"), joins, grip.join);
    take(seen(field, "square"), grip.square);
    take(seen(field, "fingers first"), grip.fingers_first);
    has = grip.any();
}

/// Where no target is named for them, the hold the lesson ended with is the one to keep.
void keep_what_was_reached(Lesson& lesson) {
    const auto keep = [&](auto member) {
        if (!(lesson.target.*member)) lesson.target.*member = lesson.after.*member;
    };
    keep(&unit::Grip::knuckles);
    keep(&unit::Grip::v);
    keep(&unit::Grip::thumb_side);
    keep(&unit::Grip::thumb_length);
    keep(&unit::Grip::join);
}

} // namespace

void read_grips(const yaml::Field& field, Lesson& lesson) {
    if (!field) return;
    field.only({"before", "after", "target", "show"});
    lesson.grip_span = field.key_span();
    read_grip(field.at("before"), lesson.before, lesson.has_before, lesson.before_span);
    read_grip(field.at("after"), lesson.after, lesson.has_after, lesson.after_span);
    bool has_target = false;
    diag::Span target_span;
    read_grip(field.at("target"), lesson.target, has_target, target_span);
    keep_what_was_reached(lesson);
    for (const yaml::Field& view : field.at("show").items())
        if (const auto index = view.one_of(views))
            lesson.views.push_back({std::string(views[*index]), view.span()});
}

} // namespace record
