// Every figure of a sheet by name, for writing it alone.
#pragma once

#include "figure/grip_card.hpp"
#include "page/story.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace report {

/// What the hold card of this story's lesson bears.
figure::GripCardInput card_of(const figure::Easel& easel, const page::Story& story);

/// Names of the figures that this story can show, in the order of its pages.
std::vector<std::string> figure_names(const figure::Easel& easel, const page::Story& story);

/// The figure of that name at the size it has on the page; nothing for an unknown name.
std::optional<ink::Drawing> figure_named(const figure::Easel& easel, const page::Story& story,
                                         std::string_view name);

} // namespace report
