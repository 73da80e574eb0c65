// A term as the academy wrote it: who belongs to it, and what the coach says of each.
#pragma once

#include "diag/finding.hpp"
#include "record/lesson.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace record {

/// The rungs of the skill ladder, from the lowest.
enum class Rung : std::uint8_t { seen, practising, own, holds };
inline constexpr std::array<std::string_view, 4> rung_words{"seen", "practising", "on my own",
                                                            "holds up"};

struct Skill {
    std::string name;
    std::optional<Rung> coach, self;
};

struct TermStudent {
    diag::Located<std::string> code;
    std::string comment;          ///< the coach's
    std::vector<std::string> can; ///< "I can …": what follows
    std::string next;             ///< next aim, in the coach's words
    std::vector<Skill> ladder;
    std::string words; ///< the student's own sentence
};

struct Term {
    std::string name;
    diag::Located<Date> from, to;
    std::string language; ///< of the pages that are not a student's; empty: the house's
    Paper paper = Paper::a4;
    Coach coach;
    diag::Located<std::string> lessons; ///< folder of the lessons, beside the file; empty: its own
    bool group_page = false;
    bool lists_students = false;
    std::vector<TermStudent> students; ///< the register, in its order
};

inline constexpr std::size_t can_do_lines = 3;
inline constexpr std::size_t most_skills = 8;

Term read_term(const diag::Source& source, diag::Findings& findings);

} // namespace record
