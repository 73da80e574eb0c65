// What was seen of a hold, in words, and the six looks of the checklist.
#pragma once

#include "page/story.hpp"

#include <array>
#include <optional>
#include <string>
#include <vector>

namespace page {

/// One aspect of the hold with what was seen before and after; empty where it was not looked at.
struct Aspect {
    std::string pair_key; ///< "pair.knuckles"
    std::string before, after;
    bool pair = true; ///< both sides of the hold are in the record
};

/// Either picture of what the player sees: with the club's head, or the hand alone.
inline bool looks_down(hand::View view) {
    return view == hand::View::golfers_eye || view == hand::View::close_up;
}

/// What ticks and arrow in those pictures mean, each sentence after a space; only of what is drawn.
std::string marks_legend(const Story& story, const words::Speaker& words);

/// Every aspect that was looked at on at least one side, in the order taught.
std::vector<Aspect> aspects(const Story& story, const words::Speaker& words);

/// The aspects that a view shows, each with the anchor its call-out leads to.
struct Shown {
    const char* pair_key;
    const char* anchor;
};
std::vector<Shown> shown_in(hand::View view);

/// "Knuckles seen: 1 knuckle → 2 knuckles.", or the one side that was looked at.
std::string sentence(const Aspect& aspect, const words::Speaker& words);

/// Answers to the six looks for one hold; empty where it was not looked at.
using Looks = std::array<std::optional<bool>, 6>;
Looks looks(const unit::Grip& grip, const unit::Grip& target);

/// Of the looks that were taken both before and after, how many came out right each time.
struct LookCount {
    int before = 0, after = 0, of = 0;
};
LookCount count_looks(const record::Lesson& lesson);

/// The six lines of the checklist, with the coach's own number of knuckles.
std::vector<std::string> look_lines(const record::Lesson& lesson, const words::Speaker& words);

/// The number of knuckles the coach wants, two when the record names none.
double wanted_knuckles(const record::Lesson& lesson);

/// Words key of a view: "grip.view.golfers-eye".
std::string view_key(hand::View view);

} // namespace page
