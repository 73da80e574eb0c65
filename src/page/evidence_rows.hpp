// Evidence as the figures want it.
#pragma once

#include "figure/dots.hpp"
#include "page/story.hpp"

namespace page {

/// Dots of one measure with names of the blocks, the wanted range of the aim and the message.
figure::DotInput dots_of(const figure::Easel& easel, const Story& story, const Evidence& evidence);

/// A strip with a scale of its own, zero in the middle for sided measures.
ink::Drawing aim_strip(const figure::Easel& easel, const figure::DotInput& input, double width);

/// The scale of a strip: sided angles share one scale (pass their largest reach), others have their
/// own.
figure::Scale strip_scale(const figure::DotInput& input, double width, double reach);

} // namespace page
