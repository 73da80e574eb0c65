// What can I always go back to? One drill that was passed, without its log.
#pragma once

#include "page/course.hpp"
#include "page/drill_page.hpp"

namespace page {

Section passed_page(const figure::Easel& easel, const PassedDrill& passed, const std::string& name,
                    const HoldPicture& hold = {});

} // namespace page
