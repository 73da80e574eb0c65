// Page 5: one drill on one side that can be pinned up, with its log and its cold test.
#pragma once

#include "page/block.hpp"
#include "page/story.hpp"

#include <functional>
#include <string_view>

namespace page {

/// A posed hand for a drill's picture ("open palm"), at most that many points wide and high;
/// nothing where there is none.
using HoldPicture =
    std::function<std::optional<ink::Drawing>(std::string_view name, double width, double height)>;

/// Drill `index` of the story. Always one side, two in large print. When the texts are long, first
/// the log's rows shrink to 9 mm, then these go, one after the other: some of the air between the
/// parts and the size of the cue, the larger letters of steps and plan, stage texts, the repair
/// line (it stands on the next page too), "good enough", the picture, the reason. After each of
/// them all cautions are tried again, then those after the fourth go; the fourth and third go last
/// of all. No text is smaller than the body's.
Section drill_page(const figure::Easel& easel, const Story& story, std::size_t index,
                   const HoldPicture& hold = {});

} // namespace page
