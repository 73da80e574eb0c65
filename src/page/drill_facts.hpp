// The parts of a drill page that are read: head, steps, cue, facts.
#pragma once

#include "page/drill_page.hpp"

#include <string>
#include <vector>

namespace page {

/// Cautions for that drill, the most important first: at most six lines.
std::vector<std::string> drill_cautions(const figure::Easel& easel, const drills::Drill& drill,
                                        bool junior);

/// Why the printed rules take a drill: the sentence of a key such as "reason.face-off", filled with
/// what was measured.
std::string proposal_reason(const words::Speaker& words, const Story& story,
                            const std::string& key);

/// The coach's own reason, else the program's, else the drill's purpose.
struct DrillReason {
    std::string text;
    bool coach = false; ///< in the coach's own words
};
DrillReason drill_reason(const figure::Easel& easel, const Story& story, const ChosenDrill& chosen);

/// "1", or what the drill bears instead: "H1" in the drill book.
std::string drill_sign_text(const figure::Easel& easel, const ChosenDrill& chosen,
                            std::size_t index);

/// Question, name, reason, and the very large number in the outer corner.
ink::Drawing drill_head(const figure::Easel& easel, const Story& story, std::size_t index,
                        bool with_reason, double width);

/// Steps with hanging numbers.
ink::Drawing drill_steps(const figure::Easel& easel, const std::vector<std::string>& steps,
                         double width, theme::Text letters = theme::Text::step);

constexpr double largest_cue = 30; ///< points

/// The one cue between two strong rules, as large as one line and `largest` allow.
/// `own` is the coach's cue and comes in the coach's letter; one without text gives an empty
/// drawing.
struct Cue {
    std::string own, drills;
};
ink::Drawing drill_cue(const figure::Easel& easel, const Cue& cue, double width,
                       double largest = largest_cue);

/// "label | words", the label as high as the words' first line.
ink::Drawing drill_fact(const figure::Easel& easel, std::string_view label, std::string_view words,
                        double width, double label_width);

/// A yes/no question with two boxes at its end.
ink::Drawing drill_check(const figure::Easel& easel, std::string_view label,
                         std::string_view question, double width, double label_width);

/// Caution lines beside their label.
ink::Drawing drill_caution_lines(const figure::Easel& easel, const std::vector<std::string>& lines,
                                 double width, double label_width);

/// What the drill needs and how much room, under each other, with the room's sign.
ink::Drawing drill_needs(const figure::Easel& easel, const drills::Drill& drill, double width);

} // namespace page
