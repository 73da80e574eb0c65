// Am I getting there? One sheet an aim, the same size and place all year.
#pragma once

#include "page/block.hpp"
#include "page/course.hpp"

#include <vector>

namespace page {

inline constexpr std::size_t days_on_a_sheet = 12;

/// "Aim: face angle, seven iron, wanted 3.0° left to 3.0° right".
std::string aim_and_range(const figure::Easel& easel, const AimCourse& aim);

/// What the sheets of one aim say in a sentence: whether it is too early, and the latest cold test.
std::string progress_sentence(const figure::Easel& easel, const AimCourse& aim);

/// The picture alone, at its fixed size: days `first`… of the aim.
ink::Drawing progress_picture(const figure::Easel& easel, const AimCourse& aim, std::size_t first);

/// Right-hand sheets, twelve days each, with their backs: a place for notes under an empty window.
std::vector<Section> progress_pages(const figure::Easel& easel, const Course& course,
                                    const AimCourse& aim, const std::string& name);

} // namespace page
