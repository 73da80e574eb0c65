// The box that marks take on a sheet. Internal to output.
#pragma once

#include "ink/mark.hpp"

#include <optional>
#include <vector>

namespace output {

/// Of the marks from `first` up to `last`, cut by their clips; nothing when they draw nothing.
std::optional<ink::Rect> bounds_of(const std::vector<ink::Mark>& marks, std::size_t first,
                                   std::size_t last);

} // namespace output
