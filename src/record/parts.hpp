// The parts of a record, one function each. A part that is left out stays as the lesson has it.
#pragma once

#include "record/lesson.hpp"
#include "record/start.hpp"
#include "yaml/field.hpp"

#include <array>

namespace record {

// read_people.cpp
void read_hand(const yaml::Field& field, diag::Located<unit::Hand>& hand);
void read_age(const yaml::Field& field, Age& age);
void read_student(const yaml::Field& field, const Start& start, Student& student,
                  diag::Findings& findings);
/// A name alone is looked for among the coaches of the start.
void read_coach(const yaml::Field& field, const Start& start, Coach& coach);
void read_club(const yaml::Field& field, Club& club);
void read_bag(const yaml::Field& field, std::vector<Club>& bag);
/// Loft and lie of the club of that name in the bag, when the club has none of its own.
void complete(Club& club, const std::vector<Club>& bag);

// read_ways.cpp
void read_language(const yaml::Field& field, std::string& language);
void read_paper(const yaml::Field& field, Paper& paper);
void read_print_name(const yaml::Field& field, PrintName& print_name);
/// Reports keys that are not kept on purpose (health, dates of birth); gives them back as known, so
/// that nobody reports them twice.
std::vector<std::string_view> refuse_private(const yaml::Field& field, diag::Findings& findings,
                                             std::string_view except = {});

// read_aim.cpp
void read_units(const yaml::Field& field, unit::Units& units);
/// `usual` completes what the aim leaves out.
void read_aim(const yaml::Field& field, unit::Units units,
              const std::map<unit::Measure, Aim>& usual, std::optional<Aim>& aim);
/// The wanted range and what is worth having, for an aim whose measure is known.
void read_wish(const yaml::Field& field, unit::Units units, Aim& aim);

// read_grip.cpp
void read_grips(const yaml::Field& field, Lesson& lesson);

// read_shots.cpp
/// What is left out stays as in `usual`; "none" means that no shots were measured.
void read_shot_source(const yaml::Field& field, const ShotSource& usual,
                      std::optional<ShotSource>& shots);
/// The ways of a table without its file: sign, units, columns, blocks, rows, set aside.
void read_table_ways(const yaml::Field& field, ShotSource& shots);
void read_set_aside_rules(const yaml::Field& field, ShotSource& shots);

// read_blocks.cpp
void read_block_words(const yaml::Field& field, ShotSource& shots);
void read_block_rows(const yaml::Field& field, ShotSource& shots);

// read_marks.cpp
void read_marks(const yaml::Field& field, Marks& marks);
void read_photographs(const yaml::Field& field, Photographs& photographs);
void read_link(const yaml::Field& field, diag::Located<std::string>& link);

// read_wind.cpp
/// "4 m/s from the left", "10 mph from ahead right", "none".
std::optional<Wind> read_wind(const yaml::Field& field, unit::Units units);

// read_follow_up.cpp
void read_conditions(const yaml::Field& field, unit::Units units, Conditions& conditions);
void read_drills(const yaml::Field& field, std::vector<DrillWish>& drills);
void read_plan(const yaml::Field& field, Plan& plan);
void read_next(const yaml::Field& field, Lesson& lesson);
void read_returned(const yaml::Field& field, std::vector<Returned>& returned);
void read_last_lesson(const yaml::Field& field, diag::Located<std::string>& last);
void read_log(const yaml::Field& field, int& days);
void read_pain(const yaml::Field& field, bool& pain);
void read_history(const yaml::Field& field, Date today, std::vector<HistoryLine>& history);

// Takes a value when it is written and right.
inline void take(const yaml::Field& field, std::string& to) {
    if (auto text = field.text()) to = std::move(*text);
}
inline void take(const yaml::Field& field, bool& to) {
    if (const auto answer = field.yes_no()) to = *answer;
}
inline void take(const yaml::Field& field, std::optional<bool>& to) {
    if (const auto answer = field.yes_no()) to = answer;
}
void take(const yaml::Field& field, std::vector<std::string>& to);

/// The word of an enumeration: `words` in the order of its values.
template <class E, std::size_t n>
std::optional<E> choose(const yaml::Field& field, const std::array<std::string_view, n>& words) {
    const auto index = field.one_of(words);
    if (!index) return std::nullopt;
    return static_cast<E>(*index);
}

/// The key of every measure, followed by `more`.
std::vector<std::string_view> measure_keys(std::initializer_list<std::string_view> more = {});

} // namespace record
