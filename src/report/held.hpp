// What is held about one student, as text and as one page.
#pragma once

#include "figure/easel.hpp"
#include "page/flow.hpp"

#include <string>
#include <vector>

namespace report {

/// A line "label | words"; without a label the words stand alone.
struct HeldRow {
    std::string label, words;
};

struct HeldPart {
    std::string title;
    std::vector<HeldRow> rows;
};

struct Held {
    std::string title;
    std::vector<HeldPart> parts;
};

/// Plain text, UTF-8, a heading over each part.
std::string held_text(const Held& held);

/// One page as a rule; a long list of lessons flows on.
page::Flowed held_page(const figure::Easel& easel, const Held& held);

} // namespace report
